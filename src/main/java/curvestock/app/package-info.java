/**
 * The one API under all skins: a job in, a checked result out.
 *
 * <p>The only place where planning, drawing, checking and files meet. Imports all packages but
 * {@code cli} and {@code web}. Start reading at {@link curvestock.app.Workshop}.
 */
package curvestock.app;
