// SPDX-License-Identifier: Apache-2.0
/**
 * A sheet for the bench as a small document: sections of entries, notices, blanks to fill in and pictures, with every
 * entry pointing to its sources. Rendered as text for a terminal and as HTML for print. Nothing is computed here.
 */
package holdfast.sheet;
