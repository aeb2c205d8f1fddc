package org.layshaft.web.http;

import org.layshaft.web.desk.SoundRequest;

/** Reads from an address what somebody wants to know of what a box sounds. */
final class SoundCalls {
    private SoundCalls() {}

    static SoundRequest request(Call call) {
        return new SoundRequest(
                call.first("layout"),
                call.first("gear"),
                call.first("rpm"),
                call.first("kmh"),
                call.first("mph"),
                call.first("hz"),
                call.first("within"),
                call.first("harmonics"),
                call.first("sidebands"));
    }
}
