package org.ferryglide.examples;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.tide.stream.StreamTable;

/** Source text handed to the compiler with all that this module's tests see. */
public final class JavaSource {
  private JavaSource() {}

  /**
   * What the compiler says; classes are written beside the source.
   *
   * @param folder where the source is written
   * @param type the name of its type
   * @param source the source
   * @return nothing where the compiler is content
   * @throws IOException if the source cannot be written
   */
  public static String messagesOfCompiler(Path folder, String type, String source)
      throws IOException {
    Path file = folder.resolve(type + ".java");
    Files.writeString(file, source);
    ByteArrayOutputStream messages = new ByteArrayOutputStream();
    int status =
        ToolProvider.getSystemJavaCompiler()
            .run(
                null,
                messages,
                messages,
                "-encoding",
                "UTF-8",
                "-proc:none",
                "-nowarn",
                "-cp",
                classPath(),
                "-d",
                folder.toString(),
                file.toString());
    return status == 0 ? "" : messages.toString(StandardCharsets.UTF_8);
  }

  private static String classPath() {
    Stream<String> ours =
        Stream.of(TrueBearing.class, StreamTable.class, TenLines.class)
            .map(type -> type.getProtectionDomain().getCodeSource().getLocation().getPath());
    Stream<String> others =
        Stream.of("surefire.test.class.path", "jdk.module.path", "java.class.path")
            .map(property -> System.getProperty(property, ""));
    return Stream.concat(ours, others).collect(Collectors.joining(File.pathSeparator));
  }
}
