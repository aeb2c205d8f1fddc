package org.layshaft.web.page;

import org.layshaft.web.desk.FitRequest;

/** What is asked at the parts counter, as an address. */
final class FitAddress {
    private FitAddress() {}

    static String link(FitRequest request) {
        return "/fit" + query(request);
    }

    static String api(FitRequest request) {
        return "/api/fit" + query(request);
    }

    private static Query query(FitRequest request) {
        return new Query()
                .with("set", request.set())
                .with("box", request.box())
                .with("serial", request.serial())
                .with("place", request.place());
    }
}
