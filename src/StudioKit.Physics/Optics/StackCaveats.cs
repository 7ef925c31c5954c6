namespace StudioKit.Physics.Optics;

/// <summary>What a photographer must know about a stack's numbers.</summary>
internal static class StackCaveats
{
    private const string Touches = "The sharp plane lies at or behind the front glass: the lens would have to touch or swallow its subject.";
    private const string EstimatedLength = "Working distance rests on a guessed length of the lens; measure it from front glass to mount and give it as 'length'.";
    private const string EstimatedReversed = "Magnification of the reversed lens rests on a guessed length; measure it from front glass to mount and give it as 'length'.";
    private const string InContact = "The close-up lens is taken to touch the lens's front principal plane; measure the lens from front glass to mount and give its 'length' for a better figure.";
    private const string ShorteningUnknown = "Closest focus is unknown, so the lens is taken to keep its focal length; it will shorten. Focus as near as it goes on a rule and measure from rule to sensor plane: that is 'closest-focus'.";
    private const string KeepsFocalLength = "Closest focus and magnification ask for more than the marked focal length: it is kept, and the principal planes are taken to lie farther apart. Measure from front glass to subject there, and go by that.";
    private const string PlanesTooFar = "Closest focus and magnification do not go with a lens of this focal length and length: one of them is off. Focus as near as it goes on a rule: measure from rule to sensor plane, and divide the sensor's width by what the frame shows of the rule.";
    private const string ConverterPupil = "The exit pupil behind the converter is a rough figure; exposure and depth do not rest on it.";

    public static IReadOnlyList<string> Of(in StackGeometry geometry, double workingDistance, bool estimatedDistance)
    {
        var caveats = new List<string>();
        AddIf(workingDistance <= 0, Touches);
        AddIf(estimatedDistance, EstimatedLength);
        AddIf(geometry.Reversed && !geometry.BarrelIsKnown, EstimatedReversed);
        AddIf(geometry.CloseUpPower > 0 && !geometry.BarrelIsKnown && !geometry.Reversed, InContact);
        AddIf(geometry.FocusesInternally && !geometry.CloseFocusIsKnown, ShorteningUnknown);
        AddIf(geometry.Lens.KeepsFocalLength, KeepsFocalLength);
        AddIf(Math.Abs(geometry.Lens.CloseHiatus) > geometry.FrontGlassToSensor, PlanesTooFar);
        AddIf(geometry.Factor > 1, ConverterPupil);
        return caveats;

        void AddIf(bool holds, string caveat)
        {
            if (holds)
            {
                caveats.Add(caveat);
            }
        }
    }
}
