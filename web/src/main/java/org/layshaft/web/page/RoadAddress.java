package org.layshaft.web.page;

import java.util.Optional;
import org.layshaft.web.desk.RoadRequest;

/** A box on the road, with what is told of its vehicle, as an address. */
final class RoadAddress {
    private RoadAddress() {}

    static String link(RoadRequest request) {
        return "/road" + query(request, request.layout());
    }

    static String api(RoadRequest request, String layout) {
        return "/api/road" + query(request, Optional.of(layout));
    }

    private static Query query(RoadRequest request, Optional<String> layout) {
        return new Query()
                .with("layout", layout)
                .with("tyre", request.tyre())
                .with("rolls", request.rolls())
                .with("axle", request.axle())
                .with("mass", request.mass())
                .with("efficiency", request.efficiency())
                .with("rolling", request.rolling())
                .with("drag", request.drag())
                .with("air", request.air())
                .with("engine", request.engine())
                .with("revs", request.revs())
                .with("at", request.at())
                .with("units", request.units());
    }
}
