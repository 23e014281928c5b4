// SPDX-License-Identifier: Apache-2.0
/** How a result explains itself: derivations step by step, their sources, warnings and cautions. */
package holdfast.trace;
