package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.FitCheck;
import org.layshaft.engine.fit.MeetingKind;

/** What every check has: what it is known by, its heading, and where it looks. */
abstract class Check implements FitCheck {
    private final String id;
    private final String title;
    private final MeetingKind meeting;

    Check(String id, String title, MeetingKind meeting) {
        this.id = id;
        this.title = title;
        this.meeting = meeting;
    }

    @Override
    public final String id() {
        return id;
    }

    @Override
    public final String title() {
        return title;
    }

    @Override
    public final MeetingKind meeting() {
        return meeting;
    }
}
