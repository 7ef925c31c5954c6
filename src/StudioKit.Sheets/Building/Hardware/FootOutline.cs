using StudioKit.Physics.Structure.Fasteners;
using StudioKit.Planning;
using StudioKit.Planning.Studio.Hardware;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building.Hardware;

/// <summary>A foot drawn apart along its screw, from the leg down: every part where it goes, with its name.</summary>
internal static class FootOutline
{
    private const double Apart = 7;
    private const double Floor = 3;
    private const double Rubber = 3;
    private const double LongestShank = 110;
    private const double LabelPt = 8;
    private const double Names = 15;

    public static IReadOnlyList<Primitive> Of(HardwareLine line)
    {
        var screw = line.Screw!;
        var full = line.Length!.Value.Millimeters;
        var shank = Math.Min(full, LongestShank);
        var marks = new List<Primitive>();
        marks.AddRange(Shank(screw, shank));
        if (shank < full)
        {
            marks.AddRange(RodOutline.Break(screw.Diameter.Millimeters / 2, shank - 12, upright: true));
        }

        var y = Apart;
        foreach (var part in line.Order)
        {
            y = part is FootPart.ScrewHead ? shank : y;
            marks.AddRange(Part(part, screw, y, line));
            y += Height(part, screw) + Apart;
        }

        marks.Add(new Dimension(new Point(-screw.AcrossCorners.Millimeters / 2, 0), new Point(-screw.AcrossCorners.Millimeters / 2, shank), 8, PlanFormat.GearMillimetres(line.Length.Value)));
        return marks;
    }

    private static IEnumerable<Primitive> Shank(HexagonScrew screw, double length)
    {
        var (radius, root) = (screw.Diameter.Millimeters / 2, (screw.Diameter - screw.Pitch).Millimeters / 2);
        yield return Polygon.Rectangle(new Bounds(-radius, 0, radius, length), Stroke.Edge, Fill.White);
        yield return new Line(new Point(-root, 0), new Point(-root, length), Stroke.Thin);
        yield return new Line(new Point(root, 0), new Point(root, length), Stroke.Thin);
    }

    private static IEnumerable<Primitive> Part(FootPart part, HexagonScrew screw, double top, HardwareLine line)
    {
        var (half, height) = (HalfWidth(part, screw), Height(part, screw));
        yield return Polygon.Rectangle(new Bounds(-half, top, half, top + height), Stroke.Edge, part switch { FootPart.CapFloor => Fill.Hatch, FootPart.RubberTip => Fill.Grey, _ => Fill.LightGrey });
        if (part is FootPart.GluedNut or FootPart.LockNut or FootPart.ScrewHead)
        {
            yield return new Line(new Point(-half / 2, top), new Point(-half / 2, top + height), Stroke.Thin);
            yield return new Line(new Point(half / 2, top), new Point(half / 2, top + height), Stroke.Thin);
        }

        var middle = top + (height / 2);
        yield return new Line(new Point(half, middle), new Point(Names, middle), Stroke.Thin);
        yield return new Label(new Point(Names + 1, middle), Name(part, line), LabelPt, Rise: TextRise.Middle);
    }

    private static double HalfWidth(FootPart part, HexagonScrew screw) => part switch
    {
        FootPart.CapFloor => Names - 2,
        FootPart.Washer => screw.WasherDiameter.Millimeters / 2,
        FootPart.RubberTip => (screw.AcrossCorners.Millimeters / 2) + 2,
        _ => screw.AcrossCorners.Millimeters / 2,
    };

    private static double Height(FootPart part, HexagonScrew screw) => part switch
    {
        FootPart.CapFloor => Floor,
        FootPart.Washer => screw.WasherThickness.Millimeters,
        FootPart.ScrewHead => screw.HeadHeight.Millimeters,
        FootPart.RubberTip => screw.HeadHeight.Millimeters + Rubber,
        _ => screw.NutHeight.Millimeters,
    };

    private static string Name(FootPart part, HardwareLine line) => part switch
    {
        FootPart.GluedNut => $"nut {line.Screw!.Thread}, glued into the cap",
        FootPart.CapFloor => $"the cap's floor: drill {PlanFormat.AsSold(line.Hole!.Value)}",
        FootPart.Washer => "washer",
        FootPart.LockNut => $"nut {line.Screw!.Thread}, drawn tight last",
        FootPart.ScrewHead => $"head of the screw {HardwareText.Screw(line)}",
        _ => "rubber tip, over the head",
    };
}
