package org.layshaft.web.page;

import org.layshaft.web.desk.SwapRequest;

/** A change as an address. */
final class SwapAddress {
    private SwapAddress() {}

    static String link(SwapRequest request) {
        return "/swap" + query(request);
    }

    static String query(SwapRequest request) {
        return new Query()
                .with("box", request.box())
                .with("serial", request.serial())
                .with("set", request.set())
                .with("place", request.place())
                .with("tyre", request.tyre())
                .with("wasTyre", request.wasTyre())
                .with("axle", request.axle())
                .with("drive", request.drive())
                .with("cruise", request.cruise())
                .with("shift", request.shift())
                .with("torque", request.torque())
                .toString();
    }
}
