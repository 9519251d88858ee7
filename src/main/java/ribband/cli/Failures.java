package ribband.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import ribband.problem.OneLine;

/** Turns whatever ends a command early into one line and an exit code. */
final class Failures {
  private final Surroundings around;
  private final String version;

  Failures(Surroundings around, String version) {
    this.around = around;
    this.version = version;
  }

  /**
   * How an early end is told.
   *
   * @param exitCode the {@link ExitCode}
   * @param lines none where all has been told before
   */
  record Told(int exitCode, List<String> lines) {
    Told {
      lines = lines.stream().map(OneLine::of).toList();
    }
  }

  /** Tells what happened; the exit code of it. */
  int tell(Throwable failure, List<String> arguments) {
    Told told = told(failure, arguments);
    tell(told);
    return told.exitCode();
  }

  /** Prints what is to be told. */
  void tell(Told told) {
    told.lines().forEach(line -> around.err().println("ribband: " + line));
  }

  /** What is to be told; of a defect a report is written. */
  Told told(Throwable failure, List<String> arguments) {
    if (failure instanceof Refusal refusal) {
      return new Told(refusal.exitCode(), refusal.lines());
    }
    for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
      if (cause instanceof IOException io) {
        return surroundings(sentence(io));
      }
      if (cause instanceof InvalidPathException name) {
        return surroundings(unsayable(name.getInput()));
      }
      if (cause instanceof OutOfMemoryError) {
        return surroundings(
            "Java has too little memory; give it more with RIBBAND_HEAP=2g or java -Xmx2g");
      }
    }
    return new Told(
        ExitCode.DEFECT,
        List.of(
            "this is a defect of ribband, not of your journal ("
                + failure.getClass().getSimpleName()
                + "); "
                + report(failure, arguments)));
  }

  private static Told surroundings(String line) {
    return new Told(ExitCode.SURROUNDINGS, List.of(line));
  }

  /** What to say where this machine's encoding has no letters for a file's name. */
  static String unsayable(String name) {
    return "this machine's locale cannot say the file name "
        + OneLine.quote(name)
        + "; run again with LC_ALL=C.UTF-8 set";
  }

  private static String sentence(IOException failure) {
    if (!(failure instanceof FileSystemException file) || file.getFile() == null) {
      String message = String.valueOf(failure.getMessage());
      return message.startsWith("cannot ") ? message : "cannot read or write: " + message;
    }
    if (file instanceof AccessDeniedException) {
      return file.getFile() + ": permission denied";
    }
    if (file instanceof NoSuchFileException) {
      return file.getFile() + ": is not there";
    }
    String reason = file.getReason() == null ? "cannot be read or written" : file.getReason();
    return file.getFile() + ": " + reason;
  }

  private String report(Throwable failure, List<String> arguments) {
    try {
      Path report = Files.createTempFile(around.temporary(), "ribband-report-", ".txt");
      StringWriter text = new StringWriter();
      PrintWriter lines = new PrintWriter(text);
      lines.println(version);
      lines.println("arguments " + arguments);
      failure.printStackTrace(lines);
      Files.writeString(report, text.toString(), StandardCharsets.UTF_8);
      return "a report to send on is in " + report;
    } catch (IOException e) {
      return "no report could be written to " + around.temporary();
    }
  }
}
