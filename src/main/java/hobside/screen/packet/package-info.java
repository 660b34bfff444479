/** The form in which the panel of a food packet is written down, with the checks that explain themselves as one types. */
package hobside.screen.packet;
