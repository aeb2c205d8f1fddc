package org.layshaft.web.http;

import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.layshaft.web.desk.BadInputException;

/** The files that pages refer to, read once. */
final class Assets {
    private static final String FOLDER = "/org/layshaft/web/assets/";
    private static final Set<String> NAMES = Set.of(
            "board.css",
            "board.js",
            "board-form.js",
            "board-offers.js",
            "board-scan.js",
            "board-schema.js",
            "board-text.js",
            "layshaft.css",
            "drawing.css",
            "sheet.css",
            "fit.css",
            "sound.css",
            "suspects.css",
            "views.css",
            "layshaft.js",
            "look.js",
            "asking.js",
            "drawing.js",
            "turning.js",
            "marks.svg",
            "icon.svg");

    private static final Map<String, String> TYPES =
            Map.of("css", "text/css;charset=utf-8", "js", "text/javascript;charset=utf-8", "svg", Reply.SVG);

    private final Map<String, Reply> byName = new TreeMap<>();

    private Assets() {}

    static Assets load() {
        Assets assets = new Assets();
        NAMES.forEach(name ->
                assets.byName.put(name, read(name, TYPES.get(name.substring(name.lastIndexOf('.') + 1)))));
        return assets;
    }

    Reply answer(Call call) {
        Reply asset = byName.get(call.rest());
        if (asset == null) {
            throw new BadInputException(UNKNOWN, "There is no file \"%s\" here.".formatted(call.path()));
        }
        return asset;
    }

    private static Reply read(String name, String type) {
        try (InputStream in = Assets.class.getResourceAsStream(FOLDER + name)) {
            byte[] body = in.readAllBytes();
            return new Reply(200, type, body, Map.of("ETag", tag(body), "Cache-Control", "no-cache"));
        } catch (IOException e) {
            throw new UncheckedIOException("The file " + FOLDER + name + " cannot be read.", e);
        }
    }

    private static String tag(byte[] body) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(body);
            return '"' + HexFormat.of().formatHex(digest, 0, 12) + '"';
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }
}
