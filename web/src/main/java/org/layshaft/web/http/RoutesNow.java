package org.layshaft.web.http;

import java.util.List;
import java.util.function.Supplier;
import org.layshaft.web.board.Library;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.page.Shell;

/** The table of addresses over what is known at this moment; made anew once that has been replaced. Thread-safe. */
final class RoutesNow implements Supplier<RoutesNow.Made> {
    private final Library library;
    private volatile Made made;

    RoutesNow(Library library) {
        this.library = library;
        this.made = make();
    }

    /** The table over a desk, and what stands around its pages. */
    record Made(Desk over, List<Route> routes, Shell shell) {}

    @Override
    public Made get() {
        return made.over() == library.desk() ? made : renewed();
    }

    private synchronized Made renewed() {
        if (made.over() != library.desk()) {
            made = make();
        }
        return made;
    }

    private Made make() {
        Desk desk = library.desk();
        return new Made(desk, Routes.over(library), new Shell(desk.knowledge()));
    }
}
