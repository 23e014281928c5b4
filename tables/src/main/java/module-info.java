// SPDX-License-Identifier: Apache-2.0
/** Reference data with provenance: tables, their sources, and a validating loader for tables of your own. */
module holdfast.tables {
  requires de.siegmar.fastcsv;

  exports holdfast.tables;
}
