using StudioKit.Web.Editing;
using StudioKit.Web.Results;
using StudioKit.Web.Tests.Engine;

namespace StudioKit.Web.Tests.Editing;

/// <summary>What lies on the desk while the worker is slower than the hand.</summary>
public sealed class DeskTests
{
    private const string Distance = "distance: 45 cm";

    [Fact]
    public async Task A_plan_of_a_text_that_was_changed_meanwhile_is_not_shown()
    {
        var engine = new WaitingEngine("plan") { IsHeld = true };
        var desk = new Desk(engine);
        var opening = desk.OpenAsync(new KitDocument("fen-edge.yaml", Asked.Demo()));
        var changing = desk.ChangeAsync(kit => kit.Change(Asked.Demo().Replace(Distance, "distance: 40 cm", StringComparison.Ordinal)));

        engine.LetOneCome();
        await opening;
        desk.Plan.Should().BeNull("it is of another text");
        desk.Step.Should().NotBeEmpty("another plan is being made");
        engine.LetOneCome();
        await changing;

        desk.Plan!.Studios[0].Lights[0].Distance.Should().Be(400);
        desk.Step.Should().BeEmpty();
    }

    [Fact]
    public async Task A_field_that_is_written_while_the_text_is_changed_elsewhere_is_written_into_the_changed_text()
    {
        var engine = new WaitingEngine("form-edit") { IsHeld = true };
        var desk = new Desk(engine);
        await desk.OpenAsync(new KitDocument("fen-edge.yaml", Asked.Demo()));
        var form = new FormDesk(engine, desk);
        var writing = form.EditAsync(FormEditKind.Write, "panel.width", [new FormValue("", "640 mm")]);

        await desk.ChangeAsync(kit => kit.Change(kit.Text + "# and windy\n"));
        engine.IsHeld = false;
        engine.LetOneCome();
        (await writing).Should().BeEmpty();

        desk.Kit!.Text.Should().Be(Asked.Demo().Replace("  width: 600 mm", "  width: 640 mm", StringComparison.Ordinal) + "# and windy\n");
    }
}
