// SPDX-License-Identifier: Apache-2.0
/** The executable jar: the sheet of a job, a script, or JShell with the vocabulary imported. Not part of the public API. */
package holdfast.shell;
