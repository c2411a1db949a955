/// The demo catalog: spreadsheets in the catalog's own format, and nothing that reads them.
@NullMarked
package org.benchleaf.demo;

import org.jspecify.annotations.NullMarked;
