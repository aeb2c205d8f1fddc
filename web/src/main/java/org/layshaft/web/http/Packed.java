package org.layshaft.web.http;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;

/** Text packed for the wire, quickly rather than tightly: a page of a whole vehicle comes to a tenth. */
final class Packed {
    private Packed() {}

    static byte[] of(byte[] text) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(text.length / 6);
        try (Quick quick = new Quick(out)) {
            quick.write(text);
        } catch (IOException e) {
            throw new UncheckedIOException("Memory does not refuse to be written to.", e);
        }
        return out.toByteArray();
    }

    private static final class Quick extends GZIPOutputStream {
        Quick(ByteArrayOutputStream out) throws IOException {
            super(out);
            def.setLevel(Deflater.BEST_SPEED);
        }
    }
}
