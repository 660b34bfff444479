package hobside.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/** A library that the build or the program stands on, as its project file beside the jar tells of it. */
record Library(String group, String name, String version, String licence, Path jar) {

    private static final String NONE = "not said";

    /** The library of a jar that lies in a folder {@code group/name/version}, as Maven keeps them. */
    static Library of(Path jar) throws IOException {
        Path folder = jar.getParent();
        Path named = folder.getParent();
        Element project = project(folder.resolve(named.getFileName() + "-" + folder.getFileName() + ".pom"));
        String group = text(project, "groupId").isEmpty() ? text(child(project, "parent"), "groupId") : text(project, "groupId");
        Path root = named;
        for (int i = 0; i < group.split("\\.").length + 1; i++) {
            root = root.getParent();
        }
        return new Library(group, named.getFileName().toString(), folder.getFileName().toString(), licence(project, root), jar);
    }

    long size() throws IOException {
        return Files.size(jar);
    }

    /** The first licence that the project names, or else its parent, or the parent of that. */
    private static String licence(Element project, Path root) throws IOException {
        Element licence = child(child(project, "licenses"), "license");
        if (licence != null) {
            return text(licence, "name");
        }
        Element parent = child(project, "parent");
        if (parent == null) {
            return NONE;
        }
        String name = text(parent, "artifactId");
        String version = text(parent, "version");
        Path file = root.resolve(text(parent, "groupId").replace('.', '/')).resolve(name).resolve(version).resolve(name + "-" + version + ".pom");
        return Files.exists(file) ? licence(project(file), root) : NONE;
    }

    static Element project(Path file) throws IOException {
        try {
            return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile()).getDocumentElement();
        } catch (ParserConfigurationException | SAXException fault) {
            throw new IOException(file + ": " + fault.getMessage(), fault);
        }
    }

    /** The first child of this name; null where there is none. */
    static Element child(Element parent, String name) {
        for (Node each = parent == null ? null : parent.getFirstChild(); each != null; each = each.getNextSibling()) {
            if (each instanceof Element element && element.getTagName().equals(name)) {
                return element;
            }
        }
        return null;
    }

    static String text(Element parent, String name) {
        Element child = child(parent, name);
        return child == null ? "" : child.getTextContent().strip();
    }
}
