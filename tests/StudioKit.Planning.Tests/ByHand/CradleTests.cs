using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Studio;
using StudioKit.Planning.Studio.Assembling;
using UnitsNet;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>A flash is held by a rail where there is room for one under it, else it lies on the ground.</summary>
public sealed class CradleTests
{
    // The sheet lies 500 mm over the ground. A rail stands 60 mm under the bright window (the kit's default), and a flash on the ground has its window
    // about 40 mm up (common practice, no source): from 500 − 60 − 40 = 400 mm under the sheet on it lies there, and a
    // frame that was asked for a rail so low would have to send it to a stand of its own.
    [Theory]
    [InlineData(250, true)]
    [InlineData(330, true)]
    [InlineData(410, false)]
    [InlineData(430, false)]
    [InlineData(455, false)]
    public void A_flash_that_leaves_less_than_its_own_height_over_the_ground_lies_on_it(int distance, bool held)
    {
        var plan = HandKit.Plan(
            HandKit.White.Replace("distance: 45 cm", FormattableString.Invariant($"distance: {distance} mm"), StringComparison.Ordinal),
            panel: "width: 400 mm, depth: 400 mm");

        plan.Frame!.LowerFlashes.Single().Support.Should().Be(held ? FlashSupport.Cradle : FlashSupport.Ground);
        plan.Frame.Assembly.OfType<AssemblyStep.PutFlash>().Any(step => step.Flash.Support == FlashSupport.Ground).Should().Be(!held);
    }

    /// <summary>
    /// The window stands 50 mm over the ground: a flash 65 mm high cannot lie under it until it is 15 mm nearer the panel, or the panel 15 mm higher.
    /// One 700 mm long sticks out under skirts between legs 400 mm apart, and no move within 300 mm helps.
    /// </summary>
    [Theory]
    [InlineData("200 mm x 75 mm x 50 mm", null, 0)]
    [InlineData("200 mm x 75 mm x 65 mm", CradleFaultKind.BodyInGround, 15)]
    [InlineData("700 mm x 75 mm x 50 mm", CradleFaultKind.BodyOutsideLegs, 0)]
    public void A_flash_lies_where_all_of_it_has_room(string body, CradleFaultKind? fault, double move)
    {
        Plan PlanWith(string distance, string height) => KitText.Plan(HandKit.Of(
            HandKit.White.Replace("distance: 45 cm", $"distance: {distance}", StringComparison.Ordinal), one: $"body: {body}", panel: "width: 400 mm, depth: 400 mm, skirts: yes, skirt-reflectance: 0")
            .Replace("height: 500 mm", $"height: {height}", StringComparison.Ordinal));
        var plan = PlanWith("450 mm", "500 mm");
        var flash = plan.Frame!.LowerFlashes.Single();

        flash.Support.Should().Be(FlashSupport.Ground);
        (flash.Fault?.Kind).Should().Be(fault);
        plan.Checks.Any(check => check is { Kind: PlanCheckKind.Cradle, Passed: false }).Should().Be(fault is not null);
        if (move > 0)
        {
            flash.Moves.Should().BeEquivalentTo([new CradleMove(CradleMoveKind.Up, Length.FromMillimeters(move)), new CradleMove(CradleMoveKind.RaisePanel, Length.FromMillimeters(move))]);
            PlanWith("435 mm", "500 mm").Checks.Should().NotContain(check => check.Kind == PlanCheckKind.Cradle && !check.Passed);
            PlanWith("450 mm", "515 mm").Checks.Should().NotContain(check => check.Kind == PlanCheckKind.Cradle && !check.Passed);
            PlanWith("436 mm", "500 mm").Checks.Should().Contain(check => check.Kind == PlanCheckKind.Cradle && !check.Passed);
        }
    }

    [Fact]
    public void Frame_and_pack_list_know_a_flash_by_one_size()
    {
        var plan = HandKit.Plan(HandKit.White, one: "body: 230 mm x 80 mm x 48 mm", panel: "width: 400 mm, depth: 400 mm");

        var size = plan.Pack.Items.Single(item => item.Name == "one").Size!;
        (size.Longest.Millimeters, size.Middle.Millimeters, size.Shortest.Millimeters).Should().Be((230, 80, 48));
    }
}
