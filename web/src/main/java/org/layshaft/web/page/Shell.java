package org.layshaft.web.page;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;

/**
 * What stands around every page: the doors to the others, each with what is kept from page to page. A page marks with
 * {@code {{> doors}}} where they go, and knows nothing else of them. Thread-safe.
 */
public final class Shell {
    /** What {@code doors.mustache} puts; no text of anybody's can, since what a template shows is escaped. */
    static final String MARK = "<!--doors-->";

    private final KnowledgeBase knowledge;
    private final Templates templates;

    public Shell(KnowledgeBase knowledge) {
        this.knowledge = knowledge;
        this.templates = new Templates();
    }

    /**
     * @param chosen name of the layout that is looked at; null for none
     * @param another where another can be chosen
     */
    private record ShellView(List<JobView> jobs, String chosen, String another) {}

    /** The doors that belong to one job. */
    private record JobView(String title, List<LinkView> doors) {}

    /**
     * The page with the doors in it.
     *
     * @param path of the page
     * @param query its decoded parameters
     */
    public String around(String html, String path, Map<String, List<String>> query) {
        int at = html.indexOf(MARK);
        return at < 0
                ? html
                : html.substring(0, at) + doors(path, Kept.of(query, knowledge)) + html.substring(at + MARK.length());
    }

    private String doors(String path, Kept kept) {
        List<JobView> jobs = Arrays.stream(Door.Job.values())
                .map(job -> new JobView(job.title(), doors(job, path, kept)))
                .toList();
        Optional<Layout> chosen = kept.layout();
        return templates.fill(
                "shell", new ShellView(jobs, chosen.map(Layout::name).orElse(null), kept.linkTo(Door.LAYOUTS)));
    }

    private static List<LinkView> doors(Door.Job job, String path, Kept kept) {
        return Arrays.stream(Door.values())
                .filter(door -> door.job() == job)
                .map(door -> new LinkView(door.text(), kept.linkTo(door), door.leadsTo(path)))
                .toList();
    }
}
