/// Signing in, and the pages that staff work with. Every page is a form and a link; none needs a script.
///
/// A group of pages is a class with `routes()`; [org.benchleaf.app.web.staff.StaffRoutes] lists the groups.
@NullMarked
package org.benchleaf.app.web.staff;

import org.jspecify.annotations.NullMarked;
