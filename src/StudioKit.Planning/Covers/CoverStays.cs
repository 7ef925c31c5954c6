using StudioKit.Kits;
using StudioKit.Kits.Covers;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Subjects;
using StudioKit.Physics.Light.Covers;
using UnitsNet;

namespace StudioKit.Planning.Covers;

/// <summary>How long animals may stay under covers.</summary>
internal static class CoverStays
{
    /// <summary>The stay in the cover of a set-up; none where it has none.</summary>
    public static CoverStay? Of(KitSpec kit, SetUpSpec setUp) => kit.CoverOf(setUp) is { } cover ? Of(cover, kit.SubjectsOf(setUp)) : null;

    /// <summary>Least stay that a subject has in the covers that stay over it; none where it is under none.</summary>
    public static Duration? Shortest(KitSpec kit, SubjectSpec subject)
    {
        var stays = kit.SetUps.Where(setUp => setUp.IsFor(subject.Name) && kit.CoverOf(setUp) is { Lifted: false })
            .Select(setUp => Of(kit, setUp)!.Limit).ToList();
        return stays.Count == 0 ? null : stays.Min();
    }

    // The largest wet skin fogs first; what is dry gives off a hundredth as much.
    private static CoverStay Of(CoverSpec cover, IEnumerable<SubjectSpec> subjects)
    {
        var limit = new CoverStay(cover.LongestStay, cover.TimeLimit is null ? CoverStayKind.Usual : CoverStayKind.Given);
        if (cover.Shape == CoverShape.Tank || subjects.Where(subject => subject.Wet).MaxBy(subject => subject.Length) is not { } wet)
        {
            return limit;
        }

        var fog = CoverAir.HalfSaturation(CoverAir.Inside(cover.Case), wet.Length);
        return fog < limit.Limit ? new CoverStay(fog, CoverStayKind.Fog) : limit;
    }
}
