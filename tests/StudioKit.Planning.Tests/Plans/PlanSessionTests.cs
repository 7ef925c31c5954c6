using StudioKit.Kits;
using UnitsNet;

namespace StudioKit.Planning.Tests.Plans;

/// <summary>What a session keeps. That its plans are right is tested on their JSON, with the sheets.</summary>
public sealed class PlanSessionTests
{
    private static readonly KitReadResult Read = KitText.Read(KitTexts.Dark + """
        pack:
          bags: [{name: creel, inside: 600 mm x 300 mm x 200 mm, mass: 1 kg}]
        set-ups:
          - name: white
            kind: white-background
            iso: 400
            lights:
              - {flash: one, role: below, distance: 40 cm}
              - {flash: two, role: above, distance: 30 cm}
        """);

    [Fact]
    public void A_changed_ISO_keeps_panel_frame_light_and_pack()
    {
        var (before, after) = Planned(kit => kit with { SetUps = [.. kit.SetUps.Select(setUp => setUp with { Iso = new(200) })] });

        after.Panel.Should().BeSameAs(before.Panel);
        after.Frame.Should().BeSameAs(before.Frame);
        after.Light.Should().BeSameAs(before.Light);
        after.Pack.Should().BeSameAs(before.Pack);
        after.Exposures.Should().NotEqual(before.Exposures);
    }

    [Fact]
    public void A_changed_bag_keeps_frame_and_exposures()
    {
        var (before, after) = Planned(kit => kit with
        {
            Pack = kit.Pack with { Bags = [kit.Pack.Bags[0] with { Mass = Mass.FromKilograms(2) }] },
        });

        after.Exposures.Should().Equal(before.Exposures);
        after.Frame.Should().BeSameAs(before.Frame);
        after.Pack.Should().NotBeSameAs(before.Pack);
    }

    [Fact]
    public void A_stronger_flash_keeps_frame_and_pack()
    {
        var (before, after) = Planned(kit => kit with { Flashes = [.. kit.Flashes.Select(flash => flash with { GuideNumber = new(flash.GuideNumber.AtIso100 * 1.1, flash.GuideNumber.Zoom) })] });

        after.Frame.Should().BeSameAs(before.Frame);
        after.Pack.Should().BeSameAs(before.Pack);
        after.Exposures.Should().NotEqual(before.Exposures);
    }

    [Fact]
    public void Progress_tells_the_stages_in_order()
    {
        var told = new List<PlanStage>();

        new PlanSession().Plan(Read, new Told(told));

        told.Should().Equal(Enum.GetValues<PlanStage>());
    }

    [Fact]
    public void A_stopped_session_stops_and_then_goes_on()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();
        var session = new PlanSession();

        session.Invoking(of => of.Plan(Read, null, source.Token)).Should().Throw<OperationCanceledException>();
        session.Plan(Read).Exposures.Should().NotBeEmpty();
    }

    private static (Plan Before, Plan After) Planned(Func<KitSpec, KitSpec> change)
    {
        var session = new PlanSession();
        return (session.Plan(Read), session.Plan(Read with { Kit = change(Read.Kit!) }));
    }

    private sealed class Told(List<PlanStage> stages) : IProgress<PlanStage>
    {
        public void Report(PlanStage value) => stages.Add(value);
    }
}
