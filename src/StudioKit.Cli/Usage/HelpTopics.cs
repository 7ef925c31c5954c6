namespace StudioKit.Cli.Usage;

/// <summary>What is told about the command line as a whole, a topic each.</summary>
internal static class HelpTopics
{
    /// <summary>Name, what it is about, and the text.</summary>
    public static IReadOnlyList<(string Name, string About, string Text)> All { get; } =
    [
        ("exit-codes", "What the exit code says.",
            """
            Every command ends with one of these exit codes:

              0  done
              1  the input is sound, but the answer is no: a check of the plan fails, a piece cannot be cut, an animal was held too long
              2  bad usage, or a kit, table, picture, reading or record that is wrong; what is wrong, where, and what would be accepted is on the error stream
              3  a file could not be read or written, or the results not printed; nothing was written in part
              70  a fault of StudioKit itself, not of what it was given: please report it
              130  stopped by Ctrl-C (143 where the system ended it); nothing was written unless it says so

            Where several kits are planned or checked, one kit's trouble does not stop the others, and the exit code is the highest of them all.
            """),
        ("json", "What --json prints.",
            """
            With --json a command prints one JSON document on the output, and nothing else. Keys are in camelCase and end in their unit: workingDistanceMm,
            whiteMarginStops, massG. Numbers have seven significant digits at most.

            Where the document cannot be made, another one says why, with the same exit code:

              done         false
              exitCode     2 or 3
              diagnostics  a list: code, severity (error or warning), file, line, column, message, hint; file, line and column are null where there are none
            """),
        ("quantities", "How lengths, powers, apertures and other quantities are written.",
            """
            Options and kits read quantities by the same rules. A number carries its unit, decimals take a point, and thousands take no mark:

              length         55 mm, 45 cm, 0.3 m, 12 in, 3/4 in, 5.6 um      aperture       f/16
              mass           850 g, 1.6 kg, 1 lb 4 oz                        shutter speed  1/125 s
              angle          60°, 60 deg                                     ISO speed      400
              time           20 min, 1/1000 s                                flash power    1/8, 1/6.4, 1/8 +1/3
              magnification  1:2, 0.5                                        stops          +1/3, -0.5
              brightness     EV 12, 10000 lx                                 guide number   38 m @ ISO 100, 35 mm

            Put quotation marks around a value with a blank in it: --focal-length "55 mm".
            A value that begins with a hyphen goes behind an equals sign: --target=-0.5
            In a kit, '± 5 %' after a value says how far off it may be.
            """),
        ("files", "What is read and written, and what is never replaced.",
            """
            A kit named - is read from the standard input. Parts are looked up in a folder 'parts' beside the kit first, then in the library that comes along;
            'studiokit parts' lists them. Measured corrections lie beside the kit and go into every plan of it.

            Files are written whole or not at all. A file that StudioKit did not write, or that was changed since, stays as it is unless --force is given.
            """),
        ("page", "The planner in the browser, and where its kits are.",
            """
            'studiokit web' serves the planner as a page to the browser of this machine. It plans there by the same rules as this command, and a kit has the same hash in both.

            After the first visit the browser has a copy of the whole page, which works without the command and without a network. It can be installed as an app from the browser's menu.

            Kits are kept by the browser, for the address of the page: http://127.0.0.1:18611/ unless --port says another. Nothing is sent anywhere. To hand a kit on, or to read it with this
            command, save it as a file there; 'Export everything' writes all kits into one file that the page can read again. Clearing the browser's data clears the kits, too.
            """),
    ];
}
