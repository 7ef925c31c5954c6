namespace StudioKit.Planning.Tests.Plans;

public sealed class PlanCheckTests
{
    private static readonly PlanCheck Sag = new()
    {
        Name = "Panel sag",
        Passed = true,
        Demand = "1 mm",
        Capacity = "4 mm",
        SourceKey = "Timoshenko1959",
        SourceLocator = "art. 30",
    };

    [Fact]
    public void A_note_says_which_check_its_caveats_belong_to() =>
        (Sag with { Caveats = ["Edges count as free.", "It may sag 2 mm."] }).Note.Should().Be("Panel sag: Edges count as free. It may sag 2 mm.");

    [Fact]
    public void A_check_without_caveats_needs_no_note() => Sag.Note.Should().BeEmpty();
}
