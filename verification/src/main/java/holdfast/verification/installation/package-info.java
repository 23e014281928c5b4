/** Checks of rollers, greasing and fleets. */
package holdfast.verification.installation;
