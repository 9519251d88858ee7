package ribband.prose;

import com.vladsch.flexmark.ext.autolink.AutolinkExtension;
import com.vladsch.flexmark.ext.footnotes.FootnoteExtension;
import com.vladsch.flexmark.ext.gfm.strikethrough.StrikethroughExtension;
import com.vladsch.flexmark.ext.gfm.tasklist.TaskListExtension;
import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.html.renderer.NodeRendererFactory;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.parser.ParserEmulationProfile;
import com.vladsch.flexmark.parser.core.ReferencePreProcessorFactory;
import com.vladsch.flexmark.util.data.DataHolder;
import com.vladsch.flexmark.util.data.MutableDataSet;
import com.vladsch.flexmark.util.misc.Extension;
import java.util.ArrayList;
import java.util.List;

/** The dialect: how Flexmark is set up. Parsers and renderers may be shared between threads. */
final class Markdown {
  private static final List<Extension> EXTENSIONS =
      List.of(
          TablesExtension.create(),
          TaskListExtension.create(),
          StrikethroughExtension.create(),
          FootnoteExtension.create());

  private Markdown() {}

  /** CommonMark and no more. */
  static Parser commonMark() {
    return parser(core());
  }

  /** CommonMark with tables, task lists, strikethrough and footnotes. */
  static Parser journal() {
    return parser(journal(EXTENSIONS));
  }

  /** The same with bare links. */
  static Parser journalWithBareLinks() {
    List<Extension> extensions = new ArrayList<>(EXTENSIONS);
    extensions.add(AutolinkExtension.create());
    return parser(journal(extensions));
  }

  private static MutableDataSet journal(List<Extension> extensions) {
    MutableDataSet options = core();
    options.set(Parser.EXTENSIONS, extensions);
    options.set(TablesExtension.WITH_CAPTION, false);
    options.set(TablesExtension.COLUMN_SPANS, false);
    options.set(TablesExtension.MIN_HEADER_ROWS, 1);
    options.set(TablesExtension.MAX_HEADER_ROWS, 1);
    options.set(TablesExtension.MIN_SEPARATOR_DASHES, 1);
    options.set(TablesExtension.APPEND_MISSING_COLUMNS, true);
    options.set(TablesExtension.DISCARD_EXTRA_COLUMNS, true);
    options.set(TablesExtension.HEADER_SEPARATOR_COLUMN_MATCH, true);
    return options;
  }

  /** Renders with the given policy laid over CommonMark. */
  static HtmlRenderer renderer(NodeRendererFactory... policy) {
    HtmlRenderer.Builder builder = HtmlRenderer.builder(core());
    builder.nodeRendererFactory(options -> new CodeSpans());
    for (NodeRendererFactory factory : policy) {
      builder.nodeRendererFactory(factory);
    }
    return builder.build();
  }

  private static MutableDataSet core() {
    MutableDataSet options = new MutableDataSet();
    options.setFrom(ParserEmulationProfile.COMMONMARK_0_29);
    options.set(Parser.LINKS_ALLOW_MATCHED_PARENTHESES, true);
    options.set(HtmlRenderer.PERCENT_ENCODE_URLS, true);
    options.set(HtmlRenderer.GENERATE_HEADER_ID, false);
    options.set(HtmlRenderer.RENDER_HEADER_ID, false);
    options.set(HtmlRenderer.OBFUSCATE_EMAIL, false);
    options.set(HtmlRenderer.SUPPRESSED_LINKS, "");
    options.set(HtmlRenderer.INDENT_SIZE, 0);
    return options;
  }

  private static Parser parser(DataHolder options) {
    return Parser.builder(options)
        .customInlineParserFactory(SteadyInlineParser::new)
        // Flexmark adds this only beside its own inline parser.
        .paragraphPreProcessorFactory(new ReferencePreProcessorFactory())
        .build();
  }
}
