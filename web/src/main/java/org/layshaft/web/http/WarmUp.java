package org.layshaft.web.http;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.page.Address;
import org.layshaft.web.page.Pages;

/** Does once what every visitor will ask for, so that the first one does not wait for it. */
final class WarmUp {
    private WarmUp() {}

    static void with(Desk desk, Pages pages) {
        for (Layout layout : desk.knowledge().layouts().values()) {
            pages.page(new Address(
                    Optional.of(layout.id()), Optional.empty(), Optional.empty(), List.of(), Optional.empty()));
        }
    }
}
