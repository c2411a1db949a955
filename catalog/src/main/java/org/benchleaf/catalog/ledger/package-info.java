/// What is written into the stock ledger and what is read back from it: values only.
@NullMarked
package org.benchleaf.catalog.ledger;

import org.jspecify.annotations.NullMarked;
