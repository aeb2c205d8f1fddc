package org.layshaft.web.page;

import org.layshaft.web.desk.WishRequest;

/** A wish as an address. */
final class WishAddress {
    private WishAddress() {}

    static String link(WishRequest request) {
        return "/wish" + query(request);
    }

    static String query(WishRequest request) {
        return new Query()
                .with("box", request.box())
                .with("serial", request.serial())
                .with("wish", request.kind())
                .with("gear", request.gear())
                .with("value", request.value())
                .with("other", request.other())
                .with("at", request.at())
                .with("within", request.within())
                .with("centre", request.centre())
                .with("axle", request.axle())
                .with("tyre", request.tyre())
                .with("wasTyre", request.wasTyre())
                .toString();
    }
}
