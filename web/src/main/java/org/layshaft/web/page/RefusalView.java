package org.layshaft.web.page;

import java.util.List;

/**
 * Why there is no page.
 *
 * @param suggestions what could have been meant
 */
record RefusalView(String title, String detail, List<String> suggestions) {
    public boolean hasSuggestions() {
        return !suggestions.isEmpty();
    }
}
