/** The fit checks, one class each; the page of explanation of each stands beside it among the resources. */
package org.layshaft.engine.fit.check;
