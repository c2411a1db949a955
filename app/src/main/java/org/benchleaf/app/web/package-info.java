/// The server: decode a request, call a service, render a page.
@NullMarked
package org.benchleaf.app.web;

import org.jspecify.annotations.NullMarked;
