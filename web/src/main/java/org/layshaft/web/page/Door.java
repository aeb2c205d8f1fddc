package org.layshaft.web.page;

/** The pages that one can go to from any other, in the order in which they are offered. */
enum Door {
    LAYOUTS(Job.LOOK, "/layouts", "Layouts"),
    GLANCE(Job.LOOK, "/box", "At a glance"),
    ASK(Job.LOOK, "/", "What works"),
    ROAD(Job.LOOK, "/road", "On the road"),
    COMPARE(Job.LOOK, "/compare", "Side by side"),
    BOARD(Job.LOOK, "/board", "Drawing board"),
    SUSPECTS(Job.DIAGNOSE, "/suspects", "What may be wrong"),
    SOUND(Job.DIAGNOSE, "/sound", "What sounds"),
    FIT(Job.PARTS, "/fit", "Does it fit"),
    CROSS(Job.PARTS, "/cross", "Sets against boxes"),
    SWAP(Job.PARTS, "/swap", "What a change does"),
    WISH(Job.PARTS, "/wish", "What would do it"),
    IDENTIFY(Job.PARTS, "/identify", "Which gear is this");

    /** Whose work it is. */
    enum Job {
        LOOK("Look and ask"),
        DIAGNOSE("Diagnose"),
        PARTS("Parts");

        private final String title;

        Job(String title) {
            this.title = title;
        }

        String title() {
            return title;
        }
    }

    private final Job job;
    private final String path;
    private final String text;

    Door(Job job, String path, String text) {
        this.job = job;
        this.path = path;
        this.text = text;
    }

    Job job() {
        return job;
    }

    String path() {
        return path;
    }

    String text() {
        return text;
    }

    /** Whether the page at this path is behind it, or belongs to that which is. */
    boolean leadsTo(String where) {
        return where.equals(path) || !path.equals("/") && where.startsWith(path + "/");
    }
}
