package org.layshaft.kb.pack;

import java.io.IOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLConnection;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Finds the folders and jars on the class path that hold a pack. */
final class ClassPathPacks {
    private static final String MANIFEST = PackSource.ROOT_IN_JAR + "/" + FileCollector.MANIFEST;

    /** Stands beside the trade pack and nowhere else. */
    private static final String BESIDE_THE_TRADE_PACK = "org/layshaft/kb/schema/pack.schema.json";

    private ClassPathPacks() {}

    /** The trade's own first. */
    static List<Path> places() {
        try {
            ClassLoader loader = ClassPathPacks.class.getClassLoader();
            Set<Path> places = new LinkedHashSet<>();
            places.add(holder(loader.getResource(BESIDE_THE_TRADE_PACK), BESIDE_THE_TRADE_PACK));
            for (URL manifest : Collections.list(loader.getResources(MANIFEST))) {
                places.add(holder(manifest, MANIFEST));
            }
            return new ArrayList<>(places);
        } catch (IOException | URISyntaxException unusual) {
            throw new IllegalStateException("the class path cannot be searched for packs", unusual);
        }
    }

    private static Path holder(URL found, String resource) throws IOException, URISyntaxException {
        URLConnection connection = found.openConnection();
        if (connection instanceof JarURLConnection jar) {
            return Path.of(jar.getJarFileURL().toURI());
        }
        Path file = Path.of(found.toURI());
        int steps = Path.of(resource).getNameCount();
        for (int step = 0; step < steps; step++) {
            file = file.getParent();
        }
        return file;
    }
}
