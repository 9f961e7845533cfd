package dev.offtake.cause;

import dev.offtake.system.Item;
import dev.offtake.system.Setting;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What is known so far of an occasion while its head is read; nothing keeps it afterwards. */
final class Head {
  final Item at;
  @Nullable Setting power;
  double core = Double.NaN;
  double fan = Double.NaN;
  String lineUp = "";
  final Map<String, String> set = new LinkedHashMap<>();
  Optional<SaidDay> day = Optional.empty();
  TripMoment trip = TripMoment.NONE;
  Occasion.Teller teller = Occasion.Teller.READER;
  boolean notDuplicated;

  /** Something was said of the power, though perhaps nothing that there is. */
  boolean powerSaid;

  Head(Item at) {
    this.at = at;
  }

  /** The power with the speeds that were read; null when nothing was said of it. */
  @Nullable Setting setting() {
    Setting named = power;
    if (named == null) {
      return Double.isNaN(core)
          ? null
          : new Setting("", core, fan, Setting.Holds.PHYSICAL, "", "", "");
    }
    return new Setting(
        named.name(),
        Double.isNaN(core) ? named.core() : core,
        Double.isNaN(fan) ? named.fan() : fan,
        named.holds(),
        named.day(),
        named.lineUp(),
        named.source());
  }
}
