using Orlop.Bench.Networks;

switch (args)
{
    case ["network"]:
        return NetworkBench.Run(Console.Out);
    default:
        Console.Error.WriteLine("Usage: Orlop.Bench network");
        return 2;
}
