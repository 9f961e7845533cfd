package dev.offtake.cause;

import dev.offtake.quantity.Stated;
import java.util.Locale;
import java.util.Optional;

/** What was read. */
public sealed interface Value {
  /** As a file writes it. */
  String words();

  /** Nobody looked. */
  record NotRead() implements Value {
    @Override
    public String words() {
      return "not read";
    }
  }

  /**
   * A number.
   *
   * @param stated the number in SI with its tolerance, gauge or absolute as its dimension says
   */
  record Figure(Stated stated) implements Value {
    @Override
    public String words() {
      return stated.text();
    }
  }

  /** A word of a person who knows the engine. */
  enum Word implements Value {
    /** Lower than usual. */
    LOW,
    /** As usual. */
    NORMAL,
    /** Higher than usual. */
    HIGH;

    @Override
    public String words() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * A needle that does not stand still.
   *
   * @param between lowest and highest, SI; empty when not said
   */
  record Swinging(Optional<Stated> between) implements Value {
    @Override
    public String words() {
      return "swinging" + between.map(range -> " " + range.text()).orElse("");
    }
  }

  /**
   * How far something that was recorded swings to either side of its middle.
   *
   * @param half half the way from trough to crest, Pa or K
   * @param noise what its needle does by itself, Pa or K
   * @param from when it was looked at, s
   * @param until s
   */
  record Swing(double half, double noise, double from, double until) implements Value {
    /** Like the logarithm of a swing, but in step with it where it is lost in the noise. */
    public double scaled() {
      double share = half / noise;
      return Math.log(share + Math.sqrt(1 + share * share));
    }

    /** The swing of which {@link #scaled} is told, Pa or K. */
    public double size(double scaled) {
      return noise * Math.sinh(scaled);
    }

    @Override
    public String words() {
      return "swings";
    }
  }

  /**
   * How often something that was recorded swings.
   *
   * @param hertz how often in a second
   */
  record Often(double hertz) implements Value {
    @Override
    public String words() {
      return String.format(Locale.ROOT, "%.2f times a second", hertz);
    }
  }

  /** A needle that stands against an end of its scale: the value lies at or beyond it. */
  enum Pegged implements Value {
    /** Against the highest mark. */
    HIGH,
    /** Against the lowest mark. */
    LOW,
    /** Against one of the two; nobody said which. */
    UNSAID;

    @Override
    public String words() {
      return this == UNSAID ? "pegged" : "pegged " + name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * A light.
   *
   * @param on whether it is lit
   */
  record Lit(boolean on) implements Value {
    @Override
    public String words() {
      return on ? "on" : "off";
    }
  }

  /**
   * The position of a part.
   *
   * @param words one of its kind's words, {@code part open}, or how far open
   * @param open share that it is open, 0 to 1; NaN when only a word was said
   */
  record Stands(String words, double open) implements Value {}

  /**
   * One reading against another, such as left against right.
   *
   * @param sense on which side of the other it lies
   * @param by how far, SI; empty when not said
   * @param other what it is compared with
   */
  record Against(Sense sense, Optional<Stated> by, About.Scaled other) implements Value {
    @Override
    public String words() {
      String far = by.map(stated -> stated.text() + " ").orElse("");
      return far + sense.words() + " " + other.name();
    }
  }

  /** On which side of another reading a reading lies. */
  enum Sense {
    /** Lower. */
    BELOW,
    /** The same. */
    SAME,
    /** Higher. */
    ABOVE;

    String words() {
      return this == SAME ? "same as" : name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * How an engine gauge moved.
   *
   * @param move which way
   * @param by how far, SI; empty when not said
   * @param control switch that was moved; empty when the movement is against the run without bleed
   * @param position where the switch was moved to; empty without a switch
   */
  record Moved(Move move, Optional<Stated> by, String control, String position) implements Value {
    @Override
    public String words() {
      String far = by.map(stated -> " " + stated.text()).orElse("");
      String when = control.isEmpty() ? "" : " when " + control + " goes " + position;
      return move.words() + far + when;
    }
  }

  /** Which way a needle moved. */
  enum Move {
    /** It rose. */
    UP,
    /** It fell. */
    DOWN,
    /** It stayed. */
    UNMOVED;

    String words() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Nothing of a complaint is seen: all its needles stand where they usually do. */
  record AsUsual() implements Value {
    @Override
    public String words() {
      return "as usual";
    }
  }

  /** What a hand near a duct feels. */
  enum Felt implements Value {
    /** Air goes through. */
    WARM,
    /** None does. */
    COLD;

    @Override
    public String words() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
