package org.layshaft.web.page;

/**
 * A link among others of its kind.
 *
 * @param current whether it leads to what is shown
 */
record LinkView(String text, String href, boolean current) {
    static LinkView to(String text, Address address) {
        return new LinkView(text, address.link(), false);
    }
}
