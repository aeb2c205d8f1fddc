/** What must hold in a layout beyond what a schema can say: one class for each subject. */
package org.layshaft.kb.check;
