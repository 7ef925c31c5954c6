using StudioKit.Kits.Description;
using StudioKit.Kits.SetUps;

namespace StudioKit.Kits.Uprights;

/// <summary>Whether upright sheets are carried by what there is where they stand.</summary>
internal static class UprightCarriers
{
    public static Fault? Check(KitSpec kit) => kit.SetUps.Select(setUp => Check(setUp, kit.UprightOf(setUp))).OfType<Fault>().FirstOrDefault();

    private static Fault? Check(SetUpSpec setUp, UprightSpec? upright) => upright switch
    {
        { Carrier: UprightCarrier.Frame } when setUp.IsBeforeUpright => new Fault(
            "uprights", $"The subject of '{setUp.Name}' stands where it grows, where no frame carries the sheet '{upright.Name}'.",
            "Write 'carrier: stakes' or 'carrier: feet', or add a flash below the panel: 'role: below'."),
        { Carrier: not UprightCarrier.Frame } when !setUp.IsBeforeUpright => new Fault(
            "uprights", $"The subject of '{setUp.Name}' stands on the panel, as a flash shines from below it, but its sheet '{upright.Name}' on the ground.",
            "Write 'carrier: frame', or leave out the flash with 'role: below'."),
        _ => null,
    };
}
