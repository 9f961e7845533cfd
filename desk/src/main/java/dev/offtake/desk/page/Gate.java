package dev.offtake.desk.page;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Stands before every answer: who asks, by which name, from which page, how often; and what a
 * browser may do with what it gets.
 */
final class Gate {
  /** Only what this server sends runs, is shown and is reached. */
  static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:;"
          + " font-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none';"
          + " frame-ancestors 'none'";

  /** What every answer tells the browser. */
  static final Map<String, String> HEADERS =
      Map.of(
          "Content-Security-Policy", POLICY,
          "X-Content-Type-Options", "nosniff",
          "X-Frame-Options", "DENY",
          "Referrer-Policy", "no-referrer",
          "Cross-Origin-Opener-Policy", "same-origin",
          "Cross-Origin-Resource-Policy", "same-origin",
          "Cross-Origin-Embedder-Policy", "require-corp",
          "Permissions-Policy", "camera=(), microphone=(), geolocation=()",
          "Cache-Control", "no-store");

  /** An address in figures cannot be made to point elsewhere by a stranger's name server. */
  private static final Pattern FIGURES =
      Pattern.compile("\\d{1,3}(\\.\\d{1,3}){3}|\\[[0-9a-fA-F:.]+]");

  private static final Set<HandlerType> METHODS =
      Set.of(HandlerType.GET, HandlerType.HEAD, HandlerType.POST);

  /** This machine's own browsers share one address: they may ask so many times as often. */
  static final int AT_HOME = 10;

  private static final int LONGEST_QUERY = 8192;

  private final Access access;
  private final List<String> names;
  private final Rate rate;
  private final Rate wrongKeys;
  private final Runnable entered;

  /**
   * Prepares.
   *
   * @param access who may come in
   * @param names by which this machine may be called besides an address in figures
   * @param limits how often is asked
   * @param entered is told when a key has been used up
   */
  Gate(Access access, List<String> names, Limits limits, Runnable entered) {
    this.access = access;
    this.names = names.stream().map(name -> name.toLowerCase(Locale.ROOT)).toList();
    this.entered = entered;
    double times = access.open() ? AT_HOME : 1;
    rate = new Rate(times * limits.perSecond(), times * limits.burst(), System::nanoTime);
    wrongKeys = new Rate(0.2, 5, System::nanoTime);
  }

  /** Lets a request pass, or refuses it. */
  void pass(Context context) {
    context.attribute(Sender.BEGAN, System.nanoTime());
    HEADERS.forEach(context::header);
    method(context);
    host(context);
    if (!rate.passes(context.req().getRemoteAddr(), Ask.many(context.queryParamMap()))) {
      throw new Refusal(Refusal.TOO_MANY, "that is asked too often", "wait a second");
    }
    if (String.valueOf(context.queryString()).length() > LONGEST_QUERY) {
      throw new Refusal(Refusal.TOO_LARGE, "the question is too long", "ask for less at once");
    }
    site(context);
    if (!known(context)) {
      enter(context);
    }
  }

  private static void method(Context context) {
    if (!METHODS.contains(context.method())) {
      throw new Refusal(405, "nothing can be done that way here", "use GET or POST");
    }
  }

  /** A stranger's page may call this machine by a name of its own: that is not ours. */
  private void host(Context context) {
    String host = String.valueOf(context.header("Host")).toLowerCase(Locale.ROOT);
    String name = host.replaceFirst(":\\d{1,5}$", "");
    boolean ours = names.contains(name) || (!access.open() && FIGURES.matcher(name).matches());
    if (!ours) {
      throw new Refusal(
          Refusal.FORBIDDEN,
          "this server does not go by that name",
          "use the address that was printed");
    }
  }

  /** What another page makes a browser send is not asked by the person. */
  private void site(Context context) {
    String site = context.header("Sec-Fetch-Site");
    boolean visit = "navigate".equals(context.header("Sec-Fetch-Mode"));
    boolean get = context.method() != HandlerType.POST;
    boolean foreign = "cross-site".equals(site) || "same-site".equals(site);
    String into = context.header("Sec-Fetch-Dest");
    boolean whole = into == null || "document".equals(into);
    // A link may lead here; a frame, and what takes work to answer, is not for others to ask.
    if (foreign && !(visit && get && whole && context.path().equals("/"))) {
      throw new Refusal(
          Refusal.FORBIDDEN, "another page asks for this", "open the page by its own address");
    }
    String origin = context.header("Origin");
    if (origin != null && !origin.equals("http://" + context.header("Host"))) {
      throw new Refusal(
          Refusal.FORBIDDEN, "another page asks for this", "open the page by its own address");
    }
    if (!get && !access.fromPage(String.valueOf(context.header("X-Offtake")))) {
      throw new Refusal(
          Refusal.FORBIDDEN, "this page is of an earlier start", "load the page again");
    }
  }

  private boolean known(Context context) {
    return access.known(String.valueOf(context.cookie(Access.COOKIE)));
  }

  private void enter(Context context) {
    String key = context.queryParam("key");
    // A preview of the link asks with HEAD, and must not use the key up.
    if (key == null || context.method() != HandlerType.GET || !context.path().equals("/")) {
      throw new Refusal(
          Refusal.FORBIDDEN,
          "this device has not been let in",
          "open the address with the key that was printed where the page was started");
    }
    if (!wrongKeys.passes(context.req().getRemoteAddr(), 1)) {
      throw new Refusal(Refusal.TOO_MANY, "too many keys were tried", "wait a minute");
    }
    if (!access.enter(key)) {
      throw new Refusal(
          Refusal.FORBIDDEN,
          "that key is used up or wrong",
          "use the last one that was printed where the page was started");
    }
    entered.run();
    context.header(
        "Set-Cookie",
        Access.COOKIE + "=" + access.cookie() + "; Path=/; HttpOnly; SameSite=Strict");
    context.redirect("/");
    context.skipRemainingHandlers();
  }
}
