package hobside.screen.terminal;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;

/** Sets up the launcher as it stands after a build, before there is a built jar. */
final class Launched {
    private Launched() {}

    /** Puts launcher and jar into a folder, and returns a link to the launcher from beside the folder. */
    static Path in(Path folder, String mainClass, String classPath) throws IOException {
        Files.createDirectories(folder);
        Path launcher = Files.copy(Path.of("src/main/launcher/hobside"), folder.resolve("hobside"));
        if (!launcher.toFile().setExecutable(true)) {
            throw new IOException("could not make " + launcher + " executable");
        }
        writeJar(folder.resolve("hobside.jar"), mainClass, classPath);
        Files.writeString(folder.resolve("hobside.jsa.for"), folder.toRealPath().resolve("hobside.jar") + "\n");
        return Files.createSymbolicLink(folder.resolveSibling("hobside"), launcher);
    }

    private static void writeJar(Path jar, String mainClass, String classPath) throws IOException {
        Manifest manifest = new Manifest();
        Attributes main = manifest.getMainAttributes();
        main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
        main.put(Attributes.Name.MAIN_CLASS, mainClass);
        main.put(Attributes.Name.CLASS_PATH, urls(classPath));
        new JarOutputStream(Files.newOutputStream(jar), manifest).close();
    }

    private static String urls(String classPath) {
        return Arrays.stream(classPath.split(File.pathSeparator))
                .map(it -> Path.of(it).toUri().toString())
                .collect(Collectors.joining(" "));
    }
}
