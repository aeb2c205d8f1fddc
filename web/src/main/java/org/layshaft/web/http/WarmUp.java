package org.layshaft.web.http;

import java.util.List;
import java.util.Map;
import org.layshaft.kb.layout.Layout;

/** Does once what every visitor will ask for, beside the first requests, so that few of them wait for it. */
final class WarmUp {
    private static final List<String> ASKED_FIRST = List.of("/", "/api/gears");

    private WarmUp() {}

    static void begin(List<Route> routes, Iterable<Layout> layouts) {
        Thread warming = new Thread(() -> ask(routes, layouts), "warming up");
        warming.setDaemon(true);
        warming.start();
    }

    private static void ask(List<Route> routes, Iterable<Layout> layouts) {
        for (Layout layout : layouts) {
            for (String path : ASKED_FIRST) {
                Call call = new Call(path, "", Map.of("layout", List.of(layout.id())));
                routes.stream()
                        .filter(route -> route.pattern().equals(path))
                        .forEach(route -> route.endpoint().answer(call));
            }
        }
    }
}
