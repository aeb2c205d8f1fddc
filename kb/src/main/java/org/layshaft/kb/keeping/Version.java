package org.layshaft.kb.keeping;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.regex.Pattern;
import org.layshaft.kb.keeping.ShelfException.Kind;

/** Tells versions apart by what is in them. */
public final class Version {
    private static final Pattern WRITTEN = Pattern.compile("[0-9a-f]{64}");

    private Version() {}

    /** SHA-256 of the text in UTF-8, in hexadecimal. */
    public static String of(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    static String require(String version) {
        if (!WRITTEN.matcher(version).matches()) {
            throw new ShelfException(
                    Kind.NAME, "There is no such version. A version is written in 64 hexadecimal digits.");
        }
        return version;
    }
}
