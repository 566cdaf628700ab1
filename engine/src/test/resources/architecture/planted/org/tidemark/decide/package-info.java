/** */
package org.tidemark.decide;
