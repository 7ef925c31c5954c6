using StudioKit.Kits;
using StudioKit.Kits.Lighting;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Planning;

namespace StudioKit.Benchmarks;

/// <summary>Prints what a warm session saves: a changed value's processor time as a share of a whole plan's, for each demo kit.</summary>
internal static class PlanSessionRatios
{
    private const int Runs = 30;

    public static void Print(TextWriter output)
    {
        foreach (var path in Directory.GetFiles("kits", "*.yaml").Order(StringComparer.Ordinal))
        {
            Print(path, output);
        }
    }

    private static void Print(string path, TextWriter output)
    {
        var read = KitReader.Read(path);
        var kit = read.Kit!;
        var step = 0;
        var session = new PlanSession();
        double Changed(Func<int, KitSpec> change) => ProcessorCost.Of(Runs, () => session.Plan(read with { Kit = change(++step) }));

        var whole = ProcessorCost.Of(Runs, () => new PlanSession().Plan(read));
        ProcessorCost.Row(output, $"{kit.Name}: whole plan", whole, whole);
        ProcessorCost.Row(output, "nothing changed", Changed(_ => kit), whole);
        ProcessorCost.Row(output, "ISO of a set-up", Changed(i => kit with { SetUps = [kit.SetUps[0] with { Iso = new(100 + i) }, .. kit.SetUps.Skip(1)] }), whole);
        if (kit.Pack.Bags.Count > 0)
        {
            ProcessorCost.Row(output, "a bag", Changed(i => kit with
            {
                Pack = kit.Pack with { Bags = [kit.Pack.Bags[0] with { Mass = kit.Pack.Bags[0].Mass + UnitsNet.Mass.FromGrams(i) }, .. kit.Pack.Bags.Skip(1)] },
            }), whole);
        }

        ProcessorCost.Row(output, "power of the flash below", Changed(i => kit with { Flashes = [.. kit.Flashes.Select(flash => Stronger(kit, flash, i))] }), whole);
        ProcessorCost.Row(output, "flash below moved", Changed(i => kit with { SetUps = [.. kit.SetUps.Select(setUp => Moved(setUp, i))] }), whole);
    }

    private static FlashSpec Stronger(KitSpec kit, FlashSpec flash, int step) =>
        kit.SetUps.SelectMany(setUp => setUp.Lights).Any(light => light.Role == LightRole.Below && light.Flash == flash.Name)
            ? flash with { GuideNumber = new GuideNumber(flash.GuideNumber.AtIso100 * (1 + (0.0001 * step)), flash.GuideNumber.Zoom) }
            : flash;

    private static SetUpSpec Moved(SetUpSpec setUp, int step) => setUp with
    {
        Lights = [.. setUp.Lights.Select(light => light.Role == LightRole.Below
            ? light with { OffsetRight = light.OffsetRight + UnitsNet.Length.FromMillimeters(0.1 * step) }
            : light)],
    };
}
