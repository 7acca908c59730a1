package org.ferryglide.tide.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.ferryglide.tide.sheet.Sheet;

/** The files of a folder, on a disk or in memory. */
interface FolderFiles {
  String TIDES = "tides";

  /** What messages call a file or the folder of tides. */
  String source(String name) throws IOException;

  boolean has(String name) throws IOException;

  /** The text of a file; what is wrong with it as text is recorded, and nothing returned. */
  Optional<FolderText> text(String name, FolderProblems problems) throws IOException;

  /**
   * The names in the folder of tides whose names end as a sheet's do, in order.
   *
   * @param most no more than these are told
   * @return the names; empty if there is no folder of tides
   */
  Optional<List<String>> tides(int most) throws IOException;

  /** Files on a disk. */
  static FolderFiles in(Path folder) {
    return new OnDisk(folder);
  }

  /** Texts by name, as {@code tides/orrin-quay.csv}. */
  static FolderFiles of(Map<String, String> texts) {
    return new InMemory(texts);
  }

  /** A name that leads into no other folder. */
  private static boolean isSheet(String name) {
    boolean plain = name.indexOf('/') < 0 && name.indexOf('\\') < 0;
    for (int i = 0; i < name.length(); i++) {
      plain &= Sheet.isPlain(name.charAt(i));
    }
    return plain && name.toLowerCase(Locale.ROOT).endsWith(".csv");
  }

  /** Whatever the capitals of their names are. */
  final class OnDisk implements FolderFiles {
    private final Path folder;

    private OnDisk(Path folder) {
      this.folder = folder;
    }

    private Path path(String name) throws IOException {
      int slash = name.indexOf('/');
      if (slash > 0) {
        return path(name.substring(0, slash)).resolve(name.substring(slash + 1));
      }
      Path exact = folder.resolve(name);
      if (!Files.exists(exact)) {
        try (Stream<Path> all = Files.list(folder)) {
          return all.filter(file -> fileName(file).equalsIgnoreCase(name))
              .sorted()
              .findFirst()
              .orElse(exact);
        }
      }
      return exact;
    }

    private static String fileName(Path file) {
      return String.valueOf(file.getFileName());
    }

    @Override
    public String source(String name) throws IOException {
      return path(name).toString();
    }

    @Override
    public boolean has(String name) throws IOException {
      return Files.exists(path(name));
    }

    @Override
    public Optional<FolderText> text(String name, FolderProblems problems) throws IOException {
      return FolderText.read(path(name), problems);
    }

    @Override
    public Optional<List<String>> tides(int most) throws IOException {
      Path tides = path(TIDES);
      if (!Files.isDirectory(tides)) {
        return Optional.empty();
      }
      List<String> names = new ArrayList<>();
      try (Stream<Path> all = Files.list(tides)) {
        all.sorted()
            .map(OnDisk::fileName)
            .filter(FolderFiles::isSheet)
            .limit(most)
            .forEach(names::add);
      }
      return Optional.of(names);
    }
  }

  /** By their very names. */
  final class InMemory implements FolderFiles {
    private final Map<String, String> texts;

    private InMemory(Map<String, String> texts) {
      this.texts = texts;
    }

    @Override
    public String source(String name) {
      return name;
    }

    @Override
    public boolean has(String name) {
      return texts.containsKey(name);
    }

    @Override
    public Optional<FolderText> text(String name, FolderProblems problems) {
      String text = texts.get(name);
      if (text == null) {
        problems.unreadable(name, 0, 0, "the file is missing");
        return Optional.empty();
      }
      return FolderText.of(name, text, problems);
    }

    @Override
    public Optional<List<String>> tides(int most) {
      List<String> names = new ArrayList<>();
      String within = TIDES + "/";
      for (String path : new TreeSet<>(texts.keySet())) {
        String name = path.startsWith(within) ? path.substring(within.length()) : "";
        if (isSheet(name) && names.size() < most) {
          names.add(name);
        }
      }
      return names.isEmpty() ? Optional.empty() : Optional.of(names);
    }
  }
}
