// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

/**
 * A reason not to install.
 *
 * @param cause what kind of reason, for the bench
 * @param text the reason with its numbers, for the record
 */
record Stop(StopCause cause, String text) {}
