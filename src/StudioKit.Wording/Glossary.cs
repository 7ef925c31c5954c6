namespace StudioKit.Wording;

/// <summary>The words of the trade that kits, sheets and commands use, each in a sentence or two.</summary>
public static class Glossary
{
    /// <summary>Every entry, in alphabetical order.</summary>
    public static IReadOnlyList<GlossaryEntry> All { get; } =
    [
        new("advice", "What to turn, by how much, and what it will do. It is never a rule of thumb: the changed state was planned before it was printed."),
        new("ambient light", "The light that is there without any flash. A kit gives it as an exposure value (EV 12) or in lux."),
        new("Airy disc", "The spot that even a perfect lens makes of a point, since light bends at the edge of the aperture. It grows with the effective f-number."),
        new("aperture", "The opening in the lens, written as an f-number: focal length over its width. f/16 is half as wide as f/8 and lets a quarter of the light through."),
        new("build sheet", "The printed drawings, cut lists and steps by which the studio is made."),
        new("camera pitch", "How steeply the camera looks down: 0° is level, 90° straight down."),
        new("card", "A sheet to laminate and carry, one for each framing of each set-up, with the settings to start from and what to turn when the frame is not right."),
        new("channel and group", "What a radio listens to: a sender fires every receiver on its channel, and may set the power of each group, A, B, C, apart."),
        new("circle of confusion", "The largest blur on the sensor that still passes for a point. A 1500th of the sensor's diagonal where a kit says nothing."),
        new("clipping", "What happens above the brightest value that the sensor can record: the pixel is plain white. The background has to clip, the animal must not."),
        new("clip point", "How far the camera's clipping lies above the saturation that the ISO speed stands for. A test frame measures it."),
        new("depth of field", "How deep the slice is, along the line of sight, in which the picture passes for sharp."),
        new("effective f-number", "The f-number that exposure and diffraction go by close up: N·(1 + m/p), with the magnification m and the pupil ratio p. At 1:1 a symmetric lens is two stops darker than its ring says."),
        new("exposure value (EV)", "Brightness of a scene in stops, at ISO 100: EV 0 is one second at f/1, and one more is twice as bright."),
        new("extension tube", "A hollow ring between camera and lens, by which the lens focuses closer."),
        new("feature", "What a subject is told from its like by: hairs, veins, facets. It counts as seen when as much of its contrast is left as Rayleigh's criterion leaves of black and white."),
        new("fill", "Flash that lightens the shadows of a scene that daylight exposes."),
        new("framing", "One combination of lens and accessories at one magnification."),
        new("guide number", "How strong a flash is: distance times f-number for a right exposure at full power, at ISO 100. It holds for one zoom setting, and mostly indoors, where walls help."),
        new("hold time", "How long an animal is kept, from catching to letting go."),
        new("kerf", "The width that a saw turns into dust. Every cut costs it."),
        new("key", "The light that models the subject; others are measured against it."),
        new("kit", "The file that describes camera, lenses, flashes, panel, frame, bags, subjects and set-ups."),
        new("light budget", "The account from the guide number to the exposure at the sensor, stop by stop: every gain and every loss has its own line and its source."),
        new("magnification", "Size on the sensor over size of the subject. At 1:2 a 20 mm beetle is 10 mm long on the sensor; at 1:1 it is as long as it is."),
        new("modifier", "What goes before a flash to make its window larger: a dome, a softbox, a flat diffuser."),
        new("panel", "The sheet of translucent white acrylic that the subject stands on and that is lit from below."),
        new("pupil ratio", "Width of the lens's opening seen from behind over that seen from in front. 1 for symmetric lenses; it changes how much light is lost close up."),
        new("rim light", "A flash from behind the subject that draws its edge against a dark background."),
        new("set-up", "One way of lighting: white-background, daylight-fill, low-light-fill or dark-background."),
        new("shelter", "What is carried and put up against sun and wind: an umbrella, a cloth, a wind-break."),
        new("skirt", "Cloth around the frame that keeps the lower flash's light in and daylight out."),
        new("stock length", "The length that pipe is sold in, before anything is cut."),
        new("stop", "A factor of two in light. One stop more is twice as much, a third of a stop a quarter more."),
        new("sweep", "A sheet bent up behind the subject, so that a low camera still sees white."),
        new("sync speed", "The shortest shutter speed at which a flash still lights the whole frame."),
        new("take-off", "How much shorter a pipe is cut than the line from one fitting's middle to the next."),
        new("transmittance", "The share of light that comes through the sheet. About a half for opal acrylic; a meter tells."),
        new("trigger", "What fires a flash: a radio, a cord, an optical cell that follows another flash, or a hand on its button."),
        new("veil", "Shadows lifted by light that a large white background scatters inside lens and camera."),
        new("verdict", "Whether an exposure works, works at the edge, or does not work, with the limit that binds."),
        new("white margin", "Stops by which the background lies above clipping at its darkest visible point. Above nought it is pure white."),
        new("working distance", "From the front of the lens to the subject."),
    ];

    /// <summary>Entries that a word means: those whose term has it, else those whose meaning does.</summary>
    /// <param name="word">The word; empty for every entry.</param>
    /// <exception cref="ArgumentNullException">There is no word.</exception>
    public static IReadOnlyList<GlossaryEntry> Find(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        var terms = All.Where(entry => entry.Term.Contains(word.Trim(), StringComparison.OrdinalIgnoreCase)).ToList();
        return terms.Count > 0 ? terms : [.. All.Where(entry => entry.Meaning.Contains(word.Trim(), StringComparison.OrdinalIgnoreCase))];
    }
}
