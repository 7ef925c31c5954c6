using StudioKit.Planning.Session;
using UnitsNet;

namespace StudioKit.Wording.Tests;

/// <summary>Steps of a session in words: what is not there is not spoken of.</summary>
public sealed class SessionStepTextTests
{
    private static readonly SessionStep Step = new()
    {
        Kind = SessionStepKind.Settling,
        Subject = "hawk-moth",
        SubjectLength = Length.FromMillimeters(45),
        SetUp = "black",
        Framing = "reed 55 at 1:2",
        Time = Duration.FromMinutes(1),
    };

    [Fact]
    public void No_sheet_is_spoken_of_where_there_is_none()
    {
        SessionStepText.Of(Step).Should().Contain("hawk-moth").And.NotContain("sheet");
        SessionStepText.Of(Step with { OnPanel = true }).Should().Contain("settle on the sheet");
    }

    [Theory]
    [InlineData(8, 0, false, "Photograph the hawk-moth: 8 frames.")]
    [InlineData(20, 12, true, "Photograph the hawk-moth where it sits: 8 frames, then a focus stack of 12.")]
    public void Frames_of_a_stack_are_told_apart(int frames, int stack, bool whereItSits, string text) =>
        SessionStepText.Of(Step with { Kind = SessionStepKind.Shooting, Frames = frames, StackFrames = stack, WhereItSits = whereItSits }).Should().Be(text);

    [Fact]
    public void An_animal_that_is_held_waits_in_its_tub() =>
        SessionStepText.Of(Step with { Kind = SessionStepKind.Changing, Held = true }).Should().Contain("waits in its tub in the shade");

    [Fact]
    public void Every_kind_of_step_has_words_of_its_own() =>
        Enum.GetValues<SessionStepKind>().Select(kind => SessionStepText.Of(Step with { Kind = kind, Upright = new SessionUpright("screen", Length.FromCentimeters(30), true) })).Should().OnlyHaveUniqueItems();

    [Fact]
    public void The_test_object_is_as_long_as_the_subject() =>
        SessionStepText.Of(Step with { Kind = SessionStepKind.Testing }).Should().Contain("a twig 45 mm long");

    [Fact]
    public void A_sheet_goes_up_behind_what_grows_without_harm_to_its_neighbours()
    {
        var standing = Step with { Kind = SessionStepKind.StandingSheet, Subject = "sundew", Upright = new SessionUpright("screen", Length.FromCentimeters(30), true) };

        SessionStepText.Of(standing).Should().StartWith("Stand the screen 30 cm behind the sundew").And.Contain("neighbours");
        SessionStepText.Of(standing with { Upright = new SessionUpright("screen", Length.FromCentimeters(15), false) }).Should().StartWith("Stand the screen 15 cm behind").And.NotContain("neighbours");
    }
}
