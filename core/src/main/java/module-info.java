/** Seating a bearing in a machine member: quantities, limits and fits, tightening, rating life, press fits, the sheet. */
module holdfast.core {
  requires transitive holdfast.tables;

  exports holdfast.bearings;
  exports holdfast.fits;
  exports holdfast.quantity;
  exports holdfast.trace;
}
