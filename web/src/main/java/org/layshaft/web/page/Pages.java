package org.layshaft.web.page;

import java.util.List;
import java.util.Optional;
import org.layshaft.web.board.Library;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.desk.SoundRequest;

/** Makes pages and drawings. Thread-safe. */
public final class Pages {
    private final Templates templates = new Templates();
    private final SceneReader scenes;
    private final PageViews views;
    private final SoundPage sounds;
    private final SuspectsPage suspects;
    private final FitPage fit;
    private final CheckPages checks;
    private final CrossPage cross;
    private final SwapPage swap;
    private final WishPage wish;
    private final IdentifyPage identify;
    private final ProblemPages problems;
    private final RoadPage road;
    private final GalleryPage gallery;
    private final GlancePage glance;
    private final ComparePage compare;

    public Pages(Desk desk) {
        this.scenes = new SceneReader(desk);
        this.views = new PageViews(desk);
        this.sounds = new SoundPage(desk);
        this.suspects = new SuspectsPage(desk, templates);
        this.fit = new FitPage(desk, templates);
        this.checks = new CheckPages(desk.parts(), templates);
        this.cross = new CrossPage(desk.parts(), templates);
        this.swap = new SwapPage(desk, templates);
        this.wish = new WishPage(desk, templates);
        this.identify = new IdentifyPage(templates);
        this.problems = new ProblemPages(templates);
        this.road = new RoadPage(desk, templates);
        this.gallery = new GalleryPage(desk, templates);
        this.glance = new GlancePage(desk, templates);
        this.compare = new ComparePage(desk, templates);
    }

    /**
     * The page at this address, as HTML. Throws {@link org.layshaft.web.desk.BadInputException} where it names something
     * that is not known.
     */
    public String page(Address address) {
        return page(address, Optional.empty());
    }

    /**
     * The page at this address, where its question may follow another.
     *
     * @param before the question before; empty for none
     */
    public String page(Address address, Optional<String> before) {
        return templates.fill("page", views.of(scenes.read(scenes.standingAlone(address, before))));
    }

    /** The page of what a box sounds, as HTML. Throws as {@link #page} does. */
    public String sound(SoundRequest request) {
        return templates.fill("sound", sounds.view(request));
    }

    /** The page for diagnoses. */
    public SuspectsPage suspects() {
        return suspects;
    }

    /** The page of the parts counter. */
    public FitPage fit() {
        return fit;
    }

    /** The pages that explain fit checks. */
    public CheckPages checks() {
        return checks;
    }

    /** The page of sets against boxes. */
    public CrossPage cross() {
        return cross;
    }

    /** The page of what a change does. */
    public SwapPage swap() {
        return swap;
    }

    /** The page of what meets a wish. */
    public WishPage wish() {
        return wish;
    }

    /** The drawing board. */
    public BoardPage board(Library library) {
        return new BoardPage(library, templates);
    }

    /** The page of the bench. */
    public IdentifyPage identify() {
        return identify;
    }

    /** What a kind of refusal means, as HTML. Throws as {@link #page} does. */
    public String problem(String word) {
        return problems.page(word);
    }

    /** The page of all layouts. */
    public GalleryPage gallery() {
        return gallery;
    }

    /** The page of a box at a glance. */
    public GlancePage glance() {
        return glance;
    }

    /** The page of two boxes side by side. */
    public ComparePage compare() {
        return compare;
    }

    /** The page of a box on the road. */
    public RoadPage road() {
        return road;
    }

    /** The drawing by itself, as SVG. */
    public String drawing(Address address) {
        return SheetView.drawing(scenes.read(address), part -> Optional.empty(), false)
                .standalone();
    }

    /** A page that says why there is none, and what to try instead. */
    public String refusal(String title, String detail, List<String> suggestions) {
        return templates.fill("refusal", new RefusalView(title, detail, suggestions));
    }
}
