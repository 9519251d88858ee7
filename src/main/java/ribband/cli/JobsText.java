package ribband.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import ribband.ahead.Ahead;
import ribband.jobs.Chain;
import ribband.jobs.Evening;
import ribband.jobs.JobWords;
import ribband.jobs.NotedJob;
import ribband.jobs.OpenJob;
import ribband.jobs.OpenJob.State;
import ribband.jobs.PunchList;
import ribband.measure.Saying;
import ribband.measure.ShopTalk;
import ribband.problem.Paragraph;

/** Tells the punch list to the builder. */
final class JobsText {
  private final Ahead ahead;
  private final JobWords words;
  private final ShopTalk talk;
  private final PrintWriter out;

  JobsText(Ahead ahead, PrintWriter out) {
    this.ahead = ahead;
    this.words = new JobWords(ahead.jobs(), NotedJob::id, id -> id, ahead.pieces(), ahead.zone());
    this.talk = new ShopTalk(ahead.journal().project().units());
    this.out = out;
  }

  void list(PunchList list) {
    if (list.open().isEmpty()) {
      out.println(
          list.done().isEmpty()
              ? "No job is noted yet; note one in an entry, as todo: [{id: trim-ends}]"
              : "No job is open.");
      out.println();
      return;
    }
    jobs("Ready tonight", list.in(State.READY));
    jobs("Held by a joint in clamps", list.in(State.HELD));
    jobs("Waiting", list.in(State.WAITING));
  }

  private void jobs(String heading, List<OpenJob> jobs) {
    if (!jobs.isEmpty()) {
      out.println(heading);
      jobs.forEach(this::job);
      out.println();
    }
  }

  private void job(OpenJob open) {
    List<String> parts = new ArrayList<>();
    boolean bare = open.job().what().equals(open.job().id());
    String size = words.size(open.job());
    if (!bare || !size.isEmpty()) {
      parts.add((bare ? "" : open.job().what() + (size.isEmpty() ? "" : ", ")) + size);
    }
    open.hold().map(words::hold).ifPresent(parts::add);
    ahead.coldFor(open).map(cold -> cold.words(talk)).ifPresent(parts::add);
    if (!open.waitsFor().isEmpty()) {
      parts.add("waits for " + words.waitsFor(open));
    }
    String unlocks = words.unlocks(open.frees(), open.helps());
    if (!unlocks.isEmpty()) {
      parts.add(unlocks);
    }
    sentence(open.job().id() + (parts.isEmpty() ? "" : ": " + String.join("; ", parts)));
  }

  void chain(Chain chain) {
    if (chain.links().isEmpty()) {
      return;
    }
    out.println(
        "The longest chain: " + Saying.counted(chain.nights(), "night", "nights") + " in a row");
    chain.links().forEach(link -> sentence(words.link(link)));
    out.println();
  }

  void evening(Evening evening) {
    out.println("What fits " + Saying.hoursInWords(evening.length()));
    items("one after another", evening.together());
    items("or instead", evening.instead());
    items("nobody wrote how long", evening.unknown());
    items("longer than the evening", evening.tooLong());
    if (evening.isEmpty()) {
      sentence("nothing: no job is ready, and no piece can be made");
    }
    out.println();
  }

  private void items(String label, List<Evening.Item> items) {
    if (!items.isEmpty()) {
      sentence(label + ": " + String.join("; ", items.stream().map(words::item).toList()));
    }
  }

  private void sentence(String words) {
    out.print(Paragraph.of("  ", 4, words));
  }
}
