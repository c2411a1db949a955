/// Plant lists: the plants and numbers of a job, kept in the catalog's database.
@NullMarked
package org.benchleaf.catalog.lists;

import org.jspecify.annotations.NullMarked;
