using StudioKit.Planning;

namespace StudioKit.Wording;

/// <summary>What to do with a test object before the animal comes out of its box.</summary>
public static class TestStepText
{
    /// <summary>The steps as sentences.</summary>
    public static string Of(IEnumerable<TestStep> steps) => string.Join(' ', steps.Select(Of));

    private static string Of(TestStep step) => step switch
    {
        TestStep.BackgroundAlone => "Flash below alone: the whole background must blink as overexposed.",
        TestStep.BehindAlone => "Flash behind alone: the whole background must blink as overexposed.",
        TestStep.PanelAlone => "Flash below alone: the panel must blink as overexposed.",
        TestStep.UprightAlone => "Flash behind alone: the sheet behind must blink as overexposed.",
        TestStep.AmbientAlone => "All flashes off: the frame must be nearly black.",
        TestStep.HabitatAlone => "Flash off: the habitat must be right and the subject a little dark.",
        TestStep.SceneAlone => "Flash off: the scene must be as bright as it should look.",
        TestStep.FillOn => "Flash on: the subject lifts, without a shadow of its own.",
        TestStep.KeyAlone => "Key light alone.",
        TestStep.RimAlone => "Rim light alone: an outline and no more.",
        TestStep.EachFires => "Each flash alone: it must fire.",
        TestStep.LookThrough => "Look through the camera: stems before the sheet are bent aside and held, never cut or pulled, and let go again afterwards; where plants are protected, ask first.",
        TestStep.TurnPolariser => "Turn the polariser until the shine on a wet leaf goes; then fetch the animal.",
        _ => "All flashes: the subject must be right.",
    };
}
