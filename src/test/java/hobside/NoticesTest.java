package hobside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** What is packed into the jar is named, with its version and licence, where the jar and this project tell of it. */
class NoticesTest {

    private static final Path NOTICES = Path.of("src/main/resources/META-INF/licences");

    @Test
    void each_library_of_the_program_stands_in_the_notices_and_in_the_table() throws Exception {
        String notices = Files.readString(NOTICES.resolve("README.txt"));
        List<String> rows = Files.readAllLines(Path.of("DEVELOPERS.md")).stream().filter(line -> line.startsWith("| ")).toList();
        List<Element> libraries = ofTheProgram();
        assertTrue(libraries.size() >= 2, "the project file is read");
        for (Element library : libraries) {
            String name = text(library, "artifactId");
            String version = text(library, "version");
            assertTrue(notices.contains(name + " " + version), "name " + name + " " + version + " in " + NOTICES.resolve("README.txt"));
            assertTrue(rows.stream().anyMatch(row -> row.contains(name) && row.contains(version)), "a row for " + name + " " + version + " in DEVELOPERS.md");
        }
    }

    /** GNU LGPL 3.0, section 4 b: the work is accompanied by a copy of the GNU GPL and of that licence. */
    @Test
    void the_licences_named_lie_beside_the_notices_as_they_were_published() throws IOException {
        String lesser = Files.readString(NOTICES.resolve("LGPL-3.0.txt"));
        assertTrue(lesser.contains("GNU LESSER GENERAL PUBLIC LICENSE") && lesser.contains("4. Combined Works."));
        String general = Files.readString(NOTICES.resolve("GPL-3.0.txt"));
        assertTrue(general.contains("GNU GENERAL PUBLIC LICENSE") && general.contains("17. Interpretation of Sections 15 and 16."));
    }

    /** Apache License 2.0, section 4 a and d: a copy of the licence and of the notices goes with the work; these lie in that library's own jar. */
    @Test
    void licence_and_notices_of_the_second_library_are_not_trimmed_from_the_jar() throws Exception {
        NodeList excluded = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(Path.of("pom.xml").toFile()).getElementsByTagName("exclude");
        for (int i = 0; i < excluded.getLength(); i++) {
            String pattern = excluded.item(i).getTextContent().strip();
            assertTrue(!pattern.contains("LICEN") && !pattern.contains("NOTICE") && !pattern.equals("META-INF/*") && !pattern.equals("META-INF/**"), pattern);
        }
        for (String name : List.of("LICENSE", "NOTICE")) {
            assertEquals(1, getClass().getClassLoader().resources("META-INF/" + name).filter(each -> each.toString().contains("jackson-core")).count(), name);
        }
    }

    private static List<Element> ofTheProgram() throws Exception {
        Element project = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(Path.of("pom.xml").toFile()).getDocumentElement();
        NodeList all = project.getElementsByTagName("dependency");
        List<Element> kept = new ArrayList<>();
        for (int i = 0; i < all.getLength(); i++) {
            Element each = (Element) all.item(i);
            boolean ofAPlugin = !each.getParentNode().getParentNode().equals(project);
            if (!ofAPlugin && !List.of("test", "provided").contains(text(each, "scope"))) {
                kept.add(each);
            }
        }
        return kept;
    }

    private static String text(Element parent, String name) {
        NodeList found = parent.getElementsByTagName(name);
        return found.getLength() == 0 ? "" : found.item(0).getTextContent().strip();
    }
}
