package dev.offtake.desk.page;

import dev.offtake.quantity.Style;
import io.javalin.Javalin;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Which address answers what. */
final class Routes {
  private final Answers answers;
  private final Access access;
  private final Opened opened;
  private final Posts posts;
  private final Sheets sheets;
  private final Assets assets = new Assets();

  Routes(Answers answers, Access access, Opened opened, Posts posts, Sheets sheets) {
    this.answers = answers;
    this.access = access;
    this.opened = opened;
    this.posts = posts;
    this.sheets = sheets;
  }

  void add(Javalin http) {
    http.get("/", this::index);
    http.get("/api/system", context -> Sender.asset(context, answers.system(style(context))));
    http.get("/api/drawing", context -> Sender.asset(context, answers.drawing()));
    http.get("/api/state", context -> Sender.json(context, answers.state(ask(context))));
    http.get("/api/states", this::states);
    http.get("/api/changes", context -> Sender.json(context, answers.changes(ask(context))));
    http.get("/api/break", context -> Sender.json(context, answers.broken(ask(context))));
    http.get("/api/curve", context -> Sender.json(context, answers.curve(wanted(context))));
    http.get("/api/walk", context -> Sender.json(context, answers.walk(ask(context))));
    http.get("/api/play", this::play);
    http.get("/api/readings", posts::readings);
    http.post("/api/readings/save", posts::save);
    http.post("/api/find", posts::find);
    http.get("/api/find/{id}", posts::look);
    http.post("/api/find/{id}/stop", posts::stop);
    http.get("/pocket", this::pocket);
    http.get("/<file>", this::asset);
  }

  private void play(Context context) throws IOException {
    String file = Ask.one(context.queryParamMap(), "file");
    Sender.json(context, answers.play(file, style(context)));
  }

  private void states(Context context) {
    List<Double> cores = Ask.cores(context.queryParamMap());
    Sender.json(context, answers.states(ask(context), cores));
  }

  private static Ask ask(Context context) {
    return Ask.of(context.queryParamMap());
  }

  private static CurveDocument.Wanted wanted(Context context) {
    return CurveDocument.Wanted.of(context.queryParamMap());
  }

  private static Style style(Context context) {
    return ask(context).style();
  }

  /** The page itself: the one file that is not the same for all. */
  private void index(Context context) {
    String html =
        Assets.text("index.html")
            .replace("{{token}}", access.token())
            .replace("{{title}}", Assets.escape(opened.system().title()));
    byte[] bytes = html.getBytes(StandardCharsets.UTF_8);
    Sender.asset(context, Assets.Asset.of(bytes, "text/html; charset=utf-8"));
  }

  /** The pocket sheet, as a file to keep. */
  private void pocket(Context context) {
    byte[] sheet = sheets.sheet(style(context));
    String name = opened.file().replaceFirst("\\.[^.]*$", "").replaceAll("[^\\w.-]+", "-");
    context.header("Content-Disposition", "attachment; filename=\"" + name + "-pocket.html\"");
    context.contentType("text/html; charset=utf-8");
    context.result(sheet);
  }

  private void asset(Context context) {
    Assets.Asset asset =
        assets
            .asset(context.pathParam("file"))
            .orElseThrow(
                () -> new Refusal(Refusal.MISSING, "there is nothing here", "go back to the page"));
    Sender.asset(context, asset);
  }
}
