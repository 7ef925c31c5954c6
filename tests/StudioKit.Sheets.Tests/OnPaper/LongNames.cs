using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics;

namespace StudioKit.Sheets.Tests.OnPaper;

/// <summary>Gives everything in a kit a name as long as a kit file takes, in one script or another.</summary>
internal static class LongNames
{
    private const int Longest = 80;

    private static readonly string[] Words =
    [
        "south_edge/willow-carr, spare unit for moth evenings in the wet heath beyond the dyke",
        "запасной светильник для ночных бабочек на краю верхового болота у старой плотины",
        "εφεδρικό για νυχτερινές πεταλούδες στην άκρη του υγρότοπου δίπλα στο παλιό φράγμα",
        "zapasowe źródło światła na żółte ćmy; đèn dự phòng cho bướm đêm ở đầm lầy phía nam",
        "湿地の縁で蛾を撮るための予備の閃光灯、南の堤の向こう側で使う古いほうのひとつ、白い板と一緒に",
        "습지 가장자리에서 나방을 찍는 예비 섬광등 남쪽 둑 너머에서 쓰는 오래된 것 하얀 판과 함께",
        "wwwwwwwwwwmmmmmmmmmmwwwwwwwwwwmmmmmmmmmmwwwwwwwwwwmmmmmmmmmmwwwwwwwwwwmmmmmmmmmm",
    ];

    /// <summary>How many scripts there are to choose from.</summary>
    public static int Count => Words.Length;

    public static KitSpec Of(KitSpec kit, int script) => kit with
    {
        Name = Long(kit.Name, script),
        Lenses = [.. kit.Lenses.Select(lens => lens with { Name = Long(lens.Name, script) })],
        Flashes = [.. kit.Flashes.Select(flash => flash with { Name = Long(flash.Name, script) })],
        Modifiers = [.. kit.Modifiers.Select(modifier => modifier with { Name = Long(modifier.Name, script) })],
        Holders = [.. kit.Holders.Select(holder => holder with { Name = Long(holder.Name, script) })],
        Covers = [.. kit.Covers.Select(cover => cover with { Name = Long(cover.Name, script) })],
        Uprights = [.. kit.Uprights.Select(upright => upright with { Name = Long(upright.Name, script) })],
        Subjects = [.. kit.Subjects.Select(subject => subject with { Name = Long(subject.Name, script) })],
        SetUps = [.. kit.SetUps.Select(setUp => Of(setUp, script))],
    };

    private static SetUpSpec Of(SetUpSpec setUp, int script) => setUp with
    {
        Name = Long(setUp.Name, script),
        Lenses = Long(setUp.Lenses, script),
        Subjects = Long(setUp.Subjects, script),
        Cover = Maybe(setUp.Cover, script),
        Upright = Maybe(setUp.Upright, script),
        Lights = [.. setUp.Lights.Select(light => light with { Flash = Long(light.Flash, script), Modifier = Maybe(light.Modifier, script), Holder = Maybe(light.Holder, script) })],
    };

    private static ValueList<string> Long(ValueList<string> names, int script) => [.. names.Select(name => Long(name, script))];

    private static string? Maybe(string? name, int script) => name is null ? null : Long(name, script);

    // The old name stays in it, so that what differed still does.
    private static string Long(string name, int script) => $"{name} {Words[script]}"[..Math.Min(Longest, name.Length + 1 + Words[script].Length)].TrimEnd();
}
