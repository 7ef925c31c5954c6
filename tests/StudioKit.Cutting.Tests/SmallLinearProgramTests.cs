using Google.OrTools.LinearSolver;
using StudioKit.Cutting.Bars;

namespace StudioKit.Cutting.Tests;

public sealed class SmallLinearProgramTests
{
    /// <summary>Hillier and Lieberman, Introduction to Operations Research, ch. 3, the glass works' two products (from memory): 2 and 6, worth 36.</summary>
    [Fact]
    public void A_textbook_program_has_its_printed_solution() =>
        SmallLinearProgram.Solve([3, 5], [([1, 0], 4), ([0, 2], 12), ([3, 2], 18)]).Should().Equal(2, 6);

    /// <summary>Against the linear solver of OR-Tools, a general-purpose library.</summary>
    [Fact]
    public void Random_programs_reach_what_a_solver_reaches() =>
        Programs.Sample(program =>
        {
            var (aim, rows) = program;
            var solution = SmallLinearProgram.Solve(aim, rows);
            return Array.TrueForAll(solution, value => value >= 0)
                && rows.All(row => Product(row.Row, solution) <= row.Limit + 1e-6)
                && Math.Abs(Product(aim, solution) - Reference(aim, rows)) < 1e-6;
        });

    private static readonly Gen<(int[] Aim, (int[] Row, double Limit)[] Rows)> Programs =
        from columns in Gen.Int[1, 8]
        from aim in Gen.Int[0, 9].Array[columns]
        from rows in Gen.Select(Gen.Int[0, 6].Array[columns], Gen.Double[0, 50]).Array[1, 20]

            // A row in which every unknown counts keeps all of them bounded.
        select (aim, ((int[] Row, double Limit)[])[.. rows, ([.. Enumerable.Repeat(1, columns)], 30)]);

    private static double Product(int[] row, double[] solution) => row.Zip(solution, (factor, value) => factor * value).Sum();

    private static double Reference(int[] aim, (int[] Row, double Limit)[] rows)
    {
        using var solver = Solver.CreateSolver("GLOP");
        var unknowns = aim.Select(_ => solver.MakeNumVar(0, double.PositiveInfinity, "")).ToArray();
        foreach (var (row, limit) in rows)
        {
            using var constraint = solver.MakeConstraint(double.NegativeInfinity, limit);
            for (var i = 0; i < row.Length; i++)
            {
                constraint.SetCoefficient(unknowns[i], row[i]);
            }
        }

        for (var i = 0; i < aim.Length; i++)
        {
            solver.Objective().SetCoefficient(unknowns[i], aim[i]);
        }

        solver.Objective().SetMaximization();
        solver.Solve();
        return solver.Objective().Value();
    }
}
