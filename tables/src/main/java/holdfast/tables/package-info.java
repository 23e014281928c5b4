// SPDX-License-Identifier: Apache-2.0
/**
 * Reference tables with provenance. A {@link holdfast.tables.Table} is a CSV file and a descriptor that
 * names its document, its units and how it reached us; a {@link holdfast.tables.TableSet} is all of them
 * together with the register of documents, a version and a SHA-256 digest. There is no calculation here.
 */
package holdfast.tables;
