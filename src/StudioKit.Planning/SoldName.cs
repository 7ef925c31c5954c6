using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>A thing by its name and its sizes, put into words when it is read, since only then it is known in which units.</summary>
/// <param name="Name">What it is; empty for a length of stock.</param>
/// <param name="Form">How its sizes stand beside the name.</param>
/// <param name="Sizes">The sizes.</param>
public sealed record SoldName(string Name, SoldForm Form, ValueList<Length> Sizes)
{
    /// <summary>How thick it is; none where nobody asks.</summary>
    public Length? Thickness { get; init; }

    /// <summary>The words.</summary>
    public string Words => (Thickness is { } thickness ? $"{Name}, {PlanFormat.AsSold(thickness)}" : Name) + Form switch
    {
        SoldForm.Bar => PlanFormat.AsSold(Sizes[0]),
        SoldForm.Offcut => $"{PlanFormat.AsSold(Sizes[0])} offcut",
        SoldForm.Stock => $", {PlanFormat.AsSold(Sizes[0])} x {PlanFormat.AsSold(Sizes[1])}",
        SoldForm.CutTo => $", cut to {PlanFormat.Rectangle(Sizes[0], Sizes[1])}",
        SoldForm.Sides => $", {PlanFormat.Rectangle(Sizes[0], Sizes[1])}",
        SoldForm.Beside => $" {PlanFormat.Rectangle(Sizes[0], Sizes[1])}",
        _ => "",
    };
}
