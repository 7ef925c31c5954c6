using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Structure;

/// <summary>β of the stress under a central load, by aspect.</summary>
[Source("Young2002", "table 11.4, case 1b, row β")]
internal static class CentralStressTable
{
    // The last printed column is the endless strip; by aspect 4 the plate is one to the table's accuracy.
    private static readonly (double, double)[] Rows =
        [(1, 0.435), (1.2, 0.650), (1.4, 0.789), (1.6, 0.875), (1.8, 0.927), (2, 0.958), (4, 1.000)];

    public static double At(double aspect) => LinearTable.At(Rows, aspect);
}
