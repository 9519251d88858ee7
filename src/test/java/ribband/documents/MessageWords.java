package ribband.documents;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** The words that source files hold in quotes, as far as they may be part of a sentence. */
final class MessageWords {
  /** Two words, or one beside a blank or a semicolon. */
  private static final Pattern SENTENCE =
      Pattern.compile("\\b[a-z]+ [a-z]|; |[a-z]{2,} $|^ [a-z]{2,}");

  private MessageWords() {}

  /**
   * The words by the file they stand in; those of a programmer's mistake are left out.
   *
   * @param sources files, and folders of files
   */
  static Map<String, Set<String>> in(List<Path> sources) throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    Map<String, Set<String>> words = new TreeMap<>();
    try (StandardJavaFileManager files =
        compiler.getStandardFileManager(null, Locale.ROOT, StandardCharsets.UTF_8)) {
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null,
                  files,
                  null,
                  List.of(),
                  null,
                  files.getJavaFileObjectsFromPaths(all(sources)));
      for (CompilationUnitTree unit : task.parse()) {
        String name = Path.of(unit.getSourceFile().getName()).getFileName().toString();
        Set<String> found = new TreeSet<>();
        new Sentences(found).scan(unit, null);
        words.put(name, found);
      }
    }
    return words;
  }

  private static List<Path> all(List<Path> sources) throws IOException {
    List<Path> all = new ArrayList<>();
    for (Path source : sources) {
      try (Stream<Path> files = Files.walk(source)) {
        files.filter(file -> file.toString().endsWith(".java")).sorted().forEach(all::add);
      }
    }
    return all;
  }

  private static final class Sentences extends TreeScanner<Void, Void> {
    private final Set<String> found;

    Sentences(Set<String> found) {
      this.found = found;
    }

    @Override
    public Void visitNewClass(NewClassTree made, Void nothing) {
      // A defect of the program: no builder is told of it in these words.
      boolean defect = made.getIdentifier().toString().matches("Illegal\\w+|AssertionError");
      return defect ? null : super.visitNewClass(made, nothing);
    }

    @Override
    public Void visitLiteral(LiteralTree literal, Void nothing) {
      if (literal.getValue() instanceof String text && SENTENCE.matcher(text).find()) {
        found.add(text);
      }
      return null;
    }
  }
}
