/**
 * The program as a module, so that a Java can be linked with it inside. What it requires is all that
 * the packages' Java holds, and what those require in turn. To find it anew:
 *
 * <pre>jdeps --ignore-missing-deps --multi-release 17 --print-module-deps target/ribband.jar</pre>
 *
 * java.scripting and java.sql are named by libraries in classes that Ribband does not call. Not here:
 * jdk.localedata and jdk.charsets, as Ribband has its own names of months and reads UTF-8 alone, and
 * what speaks over a net.
 */
open module ribband {
  requires java.desktop;
  requires java.scripting;
  requires java.sql;
  requires jdk.httpserver;

  exports ribband.cli;

  // What libraries ask Java for while they run.
  uses com.fasterxml.jackson.core.JsonFactory;
  uses com.fasterxml.jackson.core.ObjectCodec;
  uses com.fasterxml.jackson.databind.Module;
  uses org.apache.commons.logging.LogFactory;
  uses org.slf4j.spi.SLF4JServiceProvider;

  // As the jar's META-INF/services has them, which a module passes over.
  provides com.fasterxml.jackson.core.JsonFactory with
      com.fasterxml.jackson.dataformat.yaml.YAMLFactory,
      com.fasterxml.jackson.core.JsonFactory;
  provides com.fasterxml.jackson.core.ObjectCodec with
      com.fasterxml.jackson.dataformat.yaml.YAMLMapper,
      com.fasterxml.jackson.databind.ObjectMapper;
  provides javax.imageio.spi.ImageInputStreamSpi with
      com.twelvemonkeys.imageio.stream.BufferedFileImageInputStreamSpi,
      com.twelvemonkeys.imageio.stream.BufferedRAFImageInputStreamSpi,
      com.twelvemonkeys.imageio.stream.BufferedInputStreamImageInputStreamSpi,
      com.twelvemonkeys.imageio.color.ProfileDeferralActivator.Spi;
  provides javax.imageio.spi.ImageReaderSpi with
      com.twelvemonkeys.imageio.plugins.webp.WebPImageReaderSpi;
  provides org.slf4j.spi.SLF4JServiceProvider with
      org.slf4j.nop.NOPServiceProvider;
}
