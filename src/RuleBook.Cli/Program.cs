Console.WriteLine("rulebook");
