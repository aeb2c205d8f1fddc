package org.layshaft.web.page;

/** What a form carries along unseen. */
record FieldView(String name, String value) {}
